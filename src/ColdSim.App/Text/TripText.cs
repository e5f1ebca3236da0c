using ColdSim.Model;
using ColdSim.Planning;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>A trip as text: the answer first, then nights, refills, totals and what to mind.</summary>
internal static class TripText
{
    private const int WidestName = 7;
    private const int MostNameLines = 2;
    private const int WidestInRefills = 16;

    public static IReadOnlyList<TextSection> Sections(TripReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        Scenario scenario = report.Run.Scenario;
        List<TextSection> sections =
        [
            new(scenario.Title, [.. Wrap.Lines(TripSentence.Of(report, units), rest: "  "), .. Ended(report), "", .. Stops(report, units).SelectMany(s => Wrap.Lines(s, rest: "  "))]),
            new("Night by night", Nights(report, units)),
        ];
        if (report.Refills.Count > 0)
            sections.Add(new("Refills", [.. Refills(report, units), "", .. report.Refills.SelectMany((r, i) => Wrap.Lines(TripSentence.OfRefill(r, i, report, units), rest: "   "))]));
        sections.AddRange(RigSections.Of(report.Run, units));
        sections.Add(new("In all", TripTotals.Lines(report, units)));
        if (scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(scenario.Assumptions, units)));
        sections.Add(new("Cautions", RunText.Points([.. TripCautions(report, units), .. Cautions.Of(report.Run), .. cautions], units)));
        return sections;
    }

    private static IReadOnlyList<string> Nights(TripReport report, UnitStyle units)
    {
        FigureTable table = new(ReportTable.Trip, units) { Context = FigureContext.Of(report.Run.Scenario), NameLines = Name };
        return
        [
            .. table.Lines(TripFigures.Nights, TripNightRow.Of(report)),
            .. Wrap.Lines($"Left at {table.Context.Dawn}, or at the end of what was run. The least margin is the gas that could have been given at full "
                + "pressure, less what was asked, in the minute of the night in which that was least."
                + (report.Refills.Count > 0 ? " A night runs from noon to noon, so a morning's refill is in the row of the night before." : "")),
        ];
    }

    private static IEnumerable<string> Name(string name)
        => Wrap.Lines(name, WidestName).SelectMany(l => l.Chunk(WidestName)).Select(c => new string(c)).Take(MostNameLines);

    private static IReadOnlyList<string> Refills(TripReport report, UnitStyle units)
        => new FigureTable(ReportTable.Refills, units) { Context = FigureContext.Of(report.Run.Scenario), WidestText = WidestInRefills }.Lines(
            TripFigures.Refills, TripRefillRow.Of(report));

    private static IEnumerable<string> Ended(TripReport report)
        => NightSentence.WhyItEnds(report.Run) is { } why ? Wrap.Lines(why, rest: "  ") : [];

    /// <summary>The stops, a sentence each.</summary>
    public static IEnumerable<string> Stops(TripReport report, UnitStyle units)
    {
        for (int i = 0; i < report.Trip.Stops.Count; i++)
        {
            TripStop stop = report.Trip.Stops[i];
            string name = stop.Name.Length > 0 ? stop.Name : "one place";
            string hookup = stop.Site.Hookup ? "hookup" : "no hookup";
            yield return $"{i + 1} {name}, {units.Height(stop.Site.Elevation_m)}, {hookup}: {ClockText.DayClock(stop.From)} to {ClockText.DayClock(stop.To)}";
        }
    }

    /// <summary>What a person on this trip has to know before acting on it.</summary>
    public static IEnumerable<string> TripCautions(TripReport report, UnitStyle units)
    {
        Rig rig = report.Run.Scenario.Rig;
        for (int i = 0; i < report.Refills.Count; i++)
        {
            TripRefill refill = report.Refills[i];
            string name = $"R{i + 1} ({rig.NameOf(refill.Refill.Cylinder)})";
            if (refill.Outcome is { Refused: false, After: { IsOverWeight: true } after })
            {
                yield return $"{name} is filled past its legal weight by {units.Mass(after.OverWeight_kg)}: cold liquid weighs more for its volume. "
                    + $"Liquid would fill it at {Full(after, units)}. Have it filled by weight, and never bring it into the warm.";
            }
            if (refill.TooHeavy && refill.Carried is { } gross)
            {
                yield return $"{name} weighs {units.Mass(gross.Kilograms)} with its gas, more than the {units.Mass(report.Trip.Carries_kg)} that one person "
                    + "is assumed to carry: two people or a cart.";
            }
            if (refill.Outcome is { Refused: true })
                yield return $"{name}: no station may fill a cylinder past its requalification date. Have it requalified, or exchange it.";
        }

        if (report.Refills.Count > 0)
            yield return Cautions.Filling;
        if (report.Refills.Any(r => r.Wait.Kind == WaitKind.CanWait))
            yield return Cautions.Waiting;
    }

    private static string Full(FilledCylinder after, UnitStyle units)
        => double.IsFinite(after.LiquidFull_K) ? units.Temperature(after.LiquidFull_K) : $"over {units.Temperature(353.15)}";
}
