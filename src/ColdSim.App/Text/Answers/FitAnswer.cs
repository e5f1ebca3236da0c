using ColdSim.Planning;
using ColdSim.Planning.Fits;
using static ColdSim.App.Text.UnitStyle;

namespace ColdSim.App.Text.Answers;

/// <summary>What a log teaches about the coach, as an answer.</summary>
internal static class FitAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="kept">Whether it is written to a file.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(FitReport fit, bool kept, UnitStyle units)
    {
        FitEstimate? loss = fit.Estimates.FirstOrDefault(e => e.Kind == FitKind.HeatLoss);
        string verdict = loss switch
        {
            null => "NOT LEARNED: the readings say nothing about the coach's heat loss",
            { IsIdentified: false } => "NOT LEARNED: the readings say too little about the coach's heat loss",
            _ => $"LEARNED: the coach loses {Percent(loss.Value)} heat than the file says",
        };
        return new()
        {
            Brief = OneLine.Of(loss is { IsIdentified: true } ? $"{verdict} ({Percent(loss.Low)} to {Percent(loss.High)})" : verdict),
            Verdict = verdict + ".",
            Consequences = Consequences(fit, loss, units),
            ToDo = ToDo(fit, kept),
            Table = Table(fit),
            AboutGuesses = "Not learned yet, and how to learn it:",
            Guesses = [.. fit.Estimates.Where(e => !e.IsIdentified).Select(e => e.Kind).Concat(fit.Silent).Select(k => $"{FitWords.Name(k)}: {HowToLearn(k)}")],
            Caution = CautionLine.Estimate,
        };
    }

    // Such as "18 % more", "4 % less".
    private static string Percent(double factor)
        => Number(Math.Abs(100 * (factor - 1)), 0) is not "0" and var percent ? $"{percent} % {(factor > 1 ? "more" : "less")}" : "no more";

    private static List<string> Consequences(FitReport fit, FitEstimate? loss, UnitStyle units)
    {
        List<string> all = [];
        if (loss is { IsIdentified: true })
            all.Add($"Four times in five it is {Percent(loss.Low)} to {Percent(loss.High)}.");
        all.AddRange(FeedWords.Noticed(fit.Log, fit.Scenario.Rig, fit.Scenario.Start.Offset));
        all.AddRange(fit.Residuals.Where(r => r.Gross).Select(r => FitWords.Gross(r, units)));
        if (FitWords.Scatter(fit) is { } scatter)
            all.Add(scatter);
        int gross = fit.Residuals.Count(r => r.Gross);

        // One entry, because a short answer shows three.
        string found = $"Found from {fit.Residuals.Count - gross} readings, {ClockText.DayClock(fit.From)} to {ClockText.DayClock(fit.To)}.";
        all.Add(string.Join(' ', [found, .. FitWords.Measured(fit)]));
        return all;
    }

    private static string ToDo(FitReport fit, bool kept) => kept ? "Do: nothing more; it is in the file now."
        : fit.Estimates.Any(e => e.IsIdentified) ? "Do: keep it with --in-place, or in a copy with --out FILE; every command then uses it."
        : "Do: go on with the log, two readings a day.";

    private static AnswerTable Table(FitReport fit)
    {
        IReadOnlyList<string> lines = FitWords.Table(fit);
        int head = lines.Count - fit.Estimates.Count;
        return new(
            [.. lines.Take(head)],
            [.. fit.Estimates.Select((e, i) => new AnswerRow(lines[head + i], e.Kind == FitKind.HeatLoss ? 2 : e.Learned_frac))],
            hidden => $"{hidden.Count} more with --full.")
        {
            Title = $"{fit.Scenario.Title}, with the range in which it is four times in five:",
        };
    }

    private static string HowToLearn(FitKind kind) => kind switch
    {
        FitKind.Infiltration => "log windy days and still ones.",
        FitKind.BaseUse => "log warm days and cold ones.",
        FitKind.WindExposure => "log nights in which the cylinder freezes up in wind.",
        _ => "log five days or more, morning and evening.",
    };
}
