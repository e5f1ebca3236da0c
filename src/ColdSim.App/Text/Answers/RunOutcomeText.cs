using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>How a whole run fails, in a few words.</summary>
internal static class RunOutcomeText
{
    /// <summary>Such as "gas is short from Thu 03:56".</summary>
    public static string Failure(RunSummary summary) => NightOutcome.Verb(summary.Verdict) + (At(summary) is { } at ? $" from {ClockText.ShortDayClock(at)}" : "");

    /// <summary>Such as "gas short Thu 03:56".</summary>
    public static string ShortFailure(RunSummary summary) => NightOutcome.Noun(summary.Verdict) + (At(summary) is { } at ? $" {ClockText.ShortDayClock(at)}" : "");

    private static DateTimeOffset? At(RunSummary summary) => summary.FirstFailure;
}
