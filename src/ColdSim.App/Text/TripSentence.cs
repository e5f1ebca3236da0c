using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text;

/// <summary>One sentence on a whole trip: whether it holds, where it does not, and what it takes.</summary>
internal static class TripSentence
{
    public static string Of(TripReport report, UnitStyle units)
    {
        RunSummary summary = report.Run.Summary;
        string takes = $"{units.Mass(summary.GasUsed.Kilograms)} of gas {Refills(report)}";
        if (summary.Verdict == Verdict.Holds)
            return $"{(summary.Nights == 1 ? "The one night holds" : $"All {summary.Nights} nights hold")}, on {takes}.";
        NightReport first = report.Run.Nights.First(n => n.Verdict != Verdict.Holds);
        return $"{summary.NightsHeld} of {summary.Nights} nights hold, on {takes}; the first that does not is {ClockText.NightName(first)}, which "
            + $"{Fails(first)}.";
    }

    private static string Fails(NightReport night) => night switch
    {
        { Verdict: Verdict.RunsFlat, Power.FlatAt: { } flat } => $"has its battery flat at {ClockText.Clock(flat)}",
        { Verdict: Verdict.RunsDry, DryAt: { } dry } => $"runs dry at {ClockText.Clock(dry)}",
        { FirstShort: { } at } => $"runs short at {ClockText.Clock(at)}",
        _ => "runs short",
    };

    private static string Refills(TripReport report)
    {
        int done = report.Refills.Count(r => r.Outcome is { Refused: false });
        int refused = report.Refills.Count(r => r.Outcome is { Refused: true });
        string text = done switch { 0 => "without a refill", 1 => "with 1 refill", _ => $"with {done} refills" };
        return refused switch { 0 => text, 1 => text + " and 1 refused", _ => text + $" and {refused} refused" };
    }
}
