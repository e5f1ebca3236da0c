using System.Globalization;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>A chance of holding as an answer.</summary>
internal static class ChanceAnswer
{
    // What moves the answer by less than this part of the spread is not worth a measurement.
    private const double WorthMeasuring_frac = 0.02;

    /// <summary>The answer.</summary>
    public static Answer Of(ChanceReport report, UnitStyle units)
    {
        IReadOnlyList<string> actions = Actions(report);
        return new()
        {
            Brief = OneLine.Of($"CHANCE {ChanceSentence.Round(report.AllNights.Chance_frac)} that {Nights(report)}{(report.Decision is null ? Beside(report) : Settled(report))}"),
            Verdict = $"CHANCE {ChanceSentence.Percent(report.AllNights)} that {Nights(report)}: {ChanceSentence.Words(report.AllNights)}.",
            Consequences = Consequences(report),
            ToDo = ToDo(report, actions),
            Actions = actions,
            Table = Table(report, units),
            AboutGuesses = GuessText.About,
            Guesses = [.. report.Influences.Where(i => i.Share_frac >= WorthMeasuring_frac).Take(3).Select(Guess)],
            Caution = CautionLine.Chance,
        };
    }

    private static string Nights(ChanceReport report) => report.Nights.Count switch
    {
        1 => $"{ClockText.NightShort(report.Nights[0].Night)} holds",
        2 => "both nights hold",
        var n => $"all {n} nights hold",
    };

    private static string Beside(ChanceReport report) => $", {(report.MeetsWantedChance ? "not below" : "below")} the {Wanted(report)} you want";

    private static string Settled(ChanceReport report) => report.Decision!.Side switch
    {
        ChanceSide.Above => $", above the {Wanted(report)} you want",
        ChanceSide.Below => $", below the {Wanted(report)} you want",
        _ => $", too near the {Wanted(report)} you want to say on which side",
    };

    private static string Wanted(ChanceReport report) => ChanceSentence.Round(report.Scenario.WantedChance_frac);

    private static List<string> Consequences(ChanceReport report)
    {
        List<string> all = [];
        if (ChanceSentence.LittleKnown(report) is { } little)
            all.Add(little);
        if (report.IsPartial)
            all.Add($"Interrupted after {ChanceSentence.Count(report.Done)} of {ChanceSentence.Count(report.Asked)}: only these count.");
        all.Add(report.Decision is { } decision ? ChanceSentence.Decided(report, decision)
            : $"That is {Beside(report)[2..]}: {ChanceSentence.Count(report.AllNights.Count)} of {ChanceSentence.Count(report.Done)} "
                + $"{(report.Seed is null ? "years" : "runs")} hold.");
        NightReport? failing = report.Plain.Nights.FirstOrDefault(n => n.Verdict != Verdict.Holds);
        string exactly = report.Seed is null ? "In the scenario's own weather" : "With everything exactly as in the file";
        all.Add(failing is null ? $"{exactly}, {(report.Nights.Count == 1 ? "it holds" : "they hold")}."
            : $"{exactly}, {ClockText.NightShort(failing)} fails: {NightOutcome.ShortFailure(failing)}.");
        return all;
    }

    private static string ToDo(ChanceReport report, IReadOnlyList<string> actions)
    {
        if (report.MeetsWantedChance)
            return "";
        if (actions.Count > 0)
            return $"Do one of these; each reaches {Wanted(report)}:";
        return report.Options.Count == 0 ? "Do: see what would hold with 'coldsim explain'."
            : $"Do: none of the options reaches {Wanted(report)}. Plan to leave or to plug in.";
    }

    private static IReadOnlyList<string> Actions(ChanceReport report) => report.MeetsWantedChance ? []
        : [.. report.Options.Where(o => o.AllNights.Chance_frac >= report.Scenario.WantedChance_frac).OrderBy(o => o.Cost ?? double.PositiveInfinity)
            .Select(o => $"{o.Option.Name}: {ChanceSentence.Percent(o.AllNights)}{(o.Cost is { } cost ? $", costs {ChanceSentence.Money(cost)}" : "")}")];

    private static AnswerTable Table(ChanceReport report, UnitStyle units)
    {
        IReadOnlyList<string> lines = ChanceTable.Nights(report, units);
        int head = lines.Count - report.Nights.Count;
        return new(
            [.. lines.Take(head)],
            [.. report.Nights.Select((n, i) => new AnswerRow(lines[head + i], 1 - n.Holds.Chance_frac))],
            hidden => string.Create(CultureInfo.InvariantCulture,
                $"{hidden.Count} more, each {ChanceSentence.Round(hidden.Min(i => report.Nights[i].Holds.Chance_frac))} or more."))
        {
            Title = $"{report.Scenario.Title}, night by night:",
        };
    }

    private static string Guess(Influence influence)
        => $"{ChanceReportFigures.Uncertainties[influence.Of].Text}, {ChanceSentence.Share(influence.Share_frac)} of the spread. {GuessText.Measure(influence.Of)}";
}
