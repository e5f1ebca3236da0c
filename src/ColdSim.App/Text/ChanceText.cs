using System.Globalization;
using ColdSim.Planning;
using ColdSim.Planning.Ensemble;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>A chance of holding as text: the answer first, then the nights, what matters, what would lift it, what it rests on.</summary>
internal static class ChanceText
{
    /// <summary>Everything, for a reader who has not seen the answer.</summary>
    public static IReadOnlyList<TextSection> Sections(ChanceReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections =
        [
            new(report.Scenario.Title, [.. Wrap.Lines(Setting(report, units)), "", .. Wrap.Lines(ChanceSentence.Of(report), rest: "  "),
                .. report.Decision is { } decision ? Wrap.Lines(ChanceSentence.Decided(report, decision), rest: "  ") : [],
                .. ChanceSentence.LittleKnown(report) is { } little ? Wrap.Lines(little, rest: "  ") : []]),
            new("Night by night", [.. ChanceTable.Nights(report, units), .. Wrap.Lines(Legend(report))]),
        ];
        if (report.Seed is not null)
            sections.Add(new("What matters most", [.. Wrap.Lines(ChanceSentence.Matters(report)), .. ChanceTable.Influences(report)]));
        if (report.Options.Count > 0)
            sections.Add(new("What would lift it", [.. Wrap.Lines(ChanceSentence.Lifts(report)), .. ChanceTable.Options(report)]));
        sections.AddRange(Grounds(report, units, cautions));
        return sections;
    }

    /// <summary>What goes below the answer, which has the chance and the nights already.</summary>
    public static IReadOnlyList<TextSection> BelowAnswer(ChanceReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections = [new("What was run", [.. Wrap.Lines(Setting(report, units)), .. Wrap.Lines(Legend(report))])];
        if (report is { Seed: not null, Influences.Count: > 0 })
            sections.Add(new("What matters most", ChanceTable.Influences(report)));
        if (report.Options.Count > 0)
            sections.Add(new("What would lift it", [.. Wrap.Lines(ChanceSentence.Lifts(report)), .. ChanceTable.Options(report)]));
        sections.AddRange(Grounds(report, units, cautions));
        return sections;
    }

    private static IEnumerable<TextSection> Grounds(ChanceReport report, UnitStyle units, IReadOnlyList<string> cautions)
    {
        yield return new("Ledger", [$"Of the worst {ChanceSentence.Member(report)}: {RunText.Ledger(report.Ledger)}"]);
        yield return new("Assumed", RunText.Points(Errors(report, units).Concat(report.Scenario.Assumptions), units));
        if (cautions.Count > 0)
            yield return new("Cautions", RunText.Points(cautions, units));
    }

    public static string Setting(ChanceReport report, UnitStyle units)
    {
        Scenario scenario = report.Scenario;
        string nights = report.Nights.Count == 1 ? "1 night" : $"{report.Nights.Count} nights";
        string many = report.Seed is { } seed
            ? FormattableString.Invariant($"{ChanceSentence.Count(report.Asked)} {ChanceSentence.Members(report, report.Asked)}, seed {seed}")
            : (report.Years.Count == 1 ? $"1 year of a record, {report.Years[0]}" : $"{report.Asked} years of a record, {report.Years[0]} to {report.Years[^1]}")
                + LeftOut(report.YearsLeftOut);
        return $"{nights} from {ClockText.Start(scenario.Start)}; {CylinderWords.All(scenario.Rig)} with "
            + $"{units.Mass(report.Plain.Summary.LeftAtStart.Kilograms)} of {report.Plain.Scenario.Rig.Gas.Name}; {many}.";
    }

    private static string LeftOut(IReadOnlyList<YearLeftOut> years)
    {
        IEnumerable<string> parts = years.GroupBy(y => y.Why).Select(g => $"{Joined([.. Runs([.. g.Select(y => y.Year)])])} ({Why(g.Key)})");
        return years.Count == 0 ? "" : $", without {Joined([.. parts])}";
    }

    private static string Why(WhyLeftOut why) => why switch
    {
        WhyLeftOut.Gap => "the record has a gap of over 3 h in these days",
        WhyLeftOut.Begins => "the record begins in these days",
        WhyLeftOut.Ends => "the record ends in these days",
        _ => throw new ArgumentOutOfRangeException(nameof(why), why, null),
    };

    // A record of a century may lack decades.
    private static IEnumerable<string> Runs(IReadOnlyList<int> years)
    {
        for (int i = 0, end; i < years.Count; i = end)
        {
            for (end = i + 1; end < years.Count && years[end] == years[end - 1] + 1;) end++;
            yield return end - i < 3 ? Joined([.. years.Skip(i).Take(end - i).Select(y => y.ToString(CultureInfo.InvariantCulture))]) : $"{years[i]} to {years[end - 1]}";
        }
    }

    private static string Joined(IReadOnlyList<string> parts) => parts.Count < 2 ? string.Concat(parts) : $"{string.Join(", ", parts.SkipLast(1))} and {parts[^1]}";

    public static string Legend(ChanceReport report)
    {
        string dawn = ClockText.Clock(report.Scenario.Criteria.Dawn);
        return $"\"Within\": where the chance lies with this many {ChanceSentence.Member(report)}s, 95 times in 100. Left at {dawn}: a tenth of them have at "
            + "most the first, half the second, nine tenths the third. Dry at: a tenth are dry by the first, and so on; shown at the night "
            + $"in which that is. Dry in {ChanceSentence.Count(report.RunsDry.Count)} of {ChanceSentence.Count(report.Done)}.";
    }

    public static IEnumerable<string> Errors(ChanceReport report, UnitStyle units)
    {
        if (report.Seed is null)
            return ["chance: the record's air is the place's own, unshifted; rig, contents and habits as the scenario says"];
        ErrorSizes e = report.Scenario.Errors;
        return
        [
            ErrorLine($"temperature forecast: off by {units.Difference(e.Temperature.Value)} a day ahead", e.Temperature),
            ErrorLine($"that grows by {units.Difference(e.TemperatureGrowth.Value)} for every day further ahead, to at most {units.Difference(ErrorSizes.LargestTemperature_K)}", e.TemperatureGrowth),
            ErrorLine($"such an error is forgotten to 1/e in {Number(e.CorrelationTime.Value / Hour_s)} h", e.CorrelationTime),
            ErrorLine($"tails of Student's t with {Number(e.Tail.Value)} degrees of freedom", e.Tail),
            ErrorLine($"wind forecast: its logarithm off by {Number(e.Wind.Value)}", e.Wind),
            ErrorLine($"coach: logarithm of the heat loss off by {Number(e.HeatLoss.Value)}", e.HeatLoss),
            ErrorLine($"coach: logarithm of the leakage area off by {Number(e.Infiltration.Value)}", e.Infiltration),
            ErrorLine($"contents of each cylinder: off by {units.Mass(e.Reading.Value)}, never over the legal filling", e.Reading),
            ErrorLine($"set points: off by {units.Difference(e.SetPoint.Value)}", e.SetPoint),
            ErrorLine($"door: up to {Number(e.DoorOpenings.Value)} openings a day beyond the heat loss, each for half the air of 30 m³", e.DoorOpenings),
        ];
    }

    private static string ErrorLine(string what, ErrorSize size) => $"{what}; {size.Source}";

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
