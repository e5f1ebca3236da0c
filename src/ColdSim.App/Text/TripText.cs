using ColdSim.Planning;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>A trip as text: the answer first, then nights, refills, totals and what to mind.</summary>
internal static class TripText
{
    public static IReadOnlyList<TextSection> Sections(TripReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        Scenario scenario = report.Run.Scenario;
        List<TextSection> sections =
        [
            new(scenario.Title, [.. Wrap.Lines(TripSentence.Of(report, units), rest: "  "), .. Ended(report), "", .. Stops(report, units)]),
            new("Night by night", TripTable.Lines(report, units)),
        ];
        if (report.Refills.Count > 0)
            sections.Add(new("Refills", [.. RefillTable.Lines(report, units), "", .. report.Refills.SelectMany((r, i) => Wrap.Lines(RefillSentence.Of(r, i, report, units), rest: "   "))]));
        sections.AddRange(RigSections.Of(report.Run, units));
        sections.Add(new("In all", TripTotals.Lines(report, units)));
        if (scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(scenario.Assumptions)));
        sections.Add(new("Cautions", RunText.Points([.. TripCautions.Of(report, units), .. ApplianceCautions.Of(report.Run), .. cautions])));
        return sections;
    }

    private static IEnumerable<string> Ended(TripReport report)
        => NightSentence.WhyItEnds(report.Run) is { } why ? Wrap.Lines(why, rest: "  ") : [];

    private static IEnumerable<string> Stops(TripReport report, UnitStyle units)
    {
        for (int i = 0; i < report.Trip.Stops.Count; i++)
        {
            TripStop stop = report.Trip.Stops[i];
            string name = stop.Name.Length > 0 ? stop.Name : "one place";
            string hookup = stop.Site.Hookup ? "hookup" : "no hookup";
            string text = $"{i + 1} {name}, {units.Height(stop.Site.Elevation_m)}, {hookup}: {ClockText.DayClock(stop.From)} to {ClockText.DayClock(stop.To)}";
            foreach (string line in Wrap.Lines(text, rest: "  "))
                yield return line;
        }
    }
}
