using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.App.Screens.Tries;

/// <summary>What a try changes, in words: "holds, 4.9 lb left", "freezing 2 h later".</summary>
internal static class TryDifference
{
    private static readonly TimeSpan Same = TimeSpan.FromMinutes(2.5);

    /// <summary>The difference, the most important first.</summary>
    /// <param name="was">The run as it is.</param>
    /// <param name="tried">The run as tried.</param>
    /// <param name="units">The units to print.</param>
    public static string Words(RunReport was, RunReport tried, UnitStyle units)
    {
        List<string> words = [];
        bool holds = Holds(tried), held = Holds(was);
        string left = $"{units.RoundMass(Left_kg(tried))} left";
        if (holds)
            return $"{(held ? "still holds" : "holds")}, {left}{More(was, tried, units, held)}";
        if (held)
            words.Add($"no longer holds: {RunOutcomeText.ShortFailure(tried.Summary)}");
        else if (Moved(was.Summary.FirstFailure, tried.Summary.FirstFailure) is { } fails)
            words.Add($"fails {fails}");
        else
            words.Add("fails at the same time");
        words.Add(Freezing(was, tried));
        if (!held && tried.Summary.NightsHeld != was.Summary.NightsHeld)
            words.Add($"{tried.Summary.NightsHeld} of {tried.Summary.Nights} nights hold, not {was.Summary.NightsHeld}");
        if (was.Summary.InsideLow is { } before && tried.Summary.InsideLow is { } now && units.WholeTemperature(before.Kelvins) != units.WholeTemperature(now.Kelvins))
            words.Add($"inside down to {units.WholeTemperature(now.Kelvins)}, not {units.WholeTemperature(before.Kelvins)}");
        return string.Join(", ", words.Where(w => w.Length > 0));
    }

    private static bool Holds(RunReport run) => run.Nights.All(n => n.Verdict == Verdict.Holds) && NightSentence.WhyItEnds(run) is null;

    // At the last dawn, as the verdict has it.
    private static double Left_kg(RunReport run) => (run.Nights[^1].LeftAtDawn ?? run.Nights[^1].LeftAtEnd).Kilograms;

    private static string More(RunReport was, RunReport tried, UnitStyle units, bool held)
    {
        double more_kg = Left_kg(tried) - Left_kg(was);
        return held && Math.Abs(more_kg) >= 0.05 ? $", {units.RoundMass(Math.Abs(more_kg))} {(more_kg > 0 ? "more" : "less")}" : "";
    }

    private static string Freezing(RunReport was, RunReport tried) => (FreezingAt(was), FreezingAt(tried)) switch
    {
        ({ } before, { } now) when Moved(before, now) is { } moved => $"freezing {moved}",
        ({ }, null) => "no freezing inside",
        (null, { } now) => $"freezing inside {ClockText.ShortDayClock(now)}",
        _ => "",
    };

    private static DateTimeOffset? FreezingAt(RunReport run) => run.Nights.FirstOrDefault(n => n.FreezingAt is not null)?.FreezingAt;

    private static string? Moved(DateTimeOffset? before, DateTimeOffset? now) => before is not { } a || now is not { } b || (b - a).Duration() < Same ? null
        : $"{RoughSpan.Of(Duration.FromSeconds((b - a).Duration().TotalSeconds))} {(b > a ? "later" : "earlier")}";
}
