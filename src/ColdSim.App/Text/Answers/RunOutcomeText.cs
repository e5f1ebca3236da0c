using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>How a whole run fails, in a few words.</summary>
internal static class RunOutcomeText
{
    /// <summary>Such as "gas is short from Thu 03:56".</summary>
    public static string Failure(RunSummary summary) => Verb(summary) + (At(summary) is { } at ? $" from {ClockText.ShortDayClock(at)}" : "");

    /// <summary>Such as "gas short Thu 03:56".</summary>
    public static string ShortFailure(RunSummary summary) => Noun(summary) + (At(summary) is { } at ? $" {ClockText.ShortDayClock(at)}" : "");

    private static string Verb(RunSummary summary) => summary.FirstOut switch
    {
        FirstOut.Battery => "the battery is flat",
        FirstOut.Gas => "gas is out",
        _ => "gas is short",
    };

    private static string Noun(RunSummary summary) => summary.FirstOut switch
    {
        FirstOut.Battery => "battery flat",
        FirstOut.Gas => "gas out",
        _ => "gas short",
    };

    private static DateTimeOffset? At(RunSummary summary) => summary.FirstFailure;
}
