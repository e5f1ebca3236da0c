using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>How a whole run fails, in a few words.</summary>
internal static class RunOutcomeText
{
    /// <summary>Such as "gas is short from Thu 03:56".</summary>
    public static string Failure(RunSummary summary) => VerdictWords.State(summary.Verdict) + (summary.FirstFailure is { } at ? $" from {ClockText.ShortDayClock(at)}" : "");

    /// <summary>Such as "gas short Thu 03:56".</summary>
    public static string ShortFailure(RunSummary summary) => VerdictWords.Short(summary.Verdict) + (summary.FirstFailure is { } at ? $" {ClockText.ShortDayClock(at)}" : "");
}
