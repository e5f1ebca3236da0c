using ColdSim.Planning;
using ColdSim.Planning.Harms;
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
        return $"{summary.NightsHeld} of {summary.Nights} nights hold, on {takes}; the first that does not is {ClockText.NightName(first)}: "
            + $"{Fails(first)}.";
    }

    private static string Fails(NightReport night) => night switch
    {
        { FirstFailure: { } at } => $"{VerdictWords.Clause(night.Verdict)} at {ClockText.Clock(at)}",
        _ => VerdictWords.Clause(night.Verdict),
    };

    private static string Refills(TripReport report)
    {
        int done = report.Refills.Count(r => r.Outcome is { Refused: false });
        int refused = report.Refills.Count(r => r.Outcome is { Refused: true });
        string text = done switch { 0 => "without a refill", 1 => "with 1 refill", _ => $"with {done} refills" };
        return refused switch { 0 => text, 1 => text + " and 1 refused", _ => text + $" and {refused} refused" };
    }

    /// <summary>One sentence a refill: what ends it, and until when it can wait.</summary>
    public static string OfRefill(TripRefill refill, int place, TripReport report, UnitStyle units)
    {
        string at = refill.Refill.Station.Length > 0 ? $" at {refill.Refill.Station}" : "";
        string start = $"R{place + 1} {report.Run.Scenario.Rig.NameOf(refill.Refill.Cylinder)}{at}: ";
        return refill.Outcome is not { } outcome ? start + "the run ends before it."
            : outcome.Refused ? $"{start}refused, for the cylinder may be filled only until {LastDay(refill, report)}; it stays as it is."
            : $"{start}{Done(outcome, units)}; {Wait(refill.Wait)}.";
    }

    private static string Done(RefillOutcome outcome, UnitStyle units) => outcome.Refill.Kind == RefillKind.Exchange
        ? $"exchanged for one with {units.Mass(outcome.After.Propane_kg)}, with {units.Mass(outcome.Before.Propane_kg)} left in the old one"
        : outcome.After.End switch
        {
            FillingEnd.Amount => $"{units.Mass(outcome.Bought_kg)} as ordered",
            FillingEnd.Volume => $"{units.Mass(outcome.Bought_kg)} until liquid stood at 80 % of the volume, at {units.Temperature(outcome.After.Liquid_K)}",
            FillingEnd.Weight => $"{units.Mass(outcome.Bought_kg)} until the scale showed the legal weight",
            _ => "none, it is full",
        };

    private static string Wait(RefillWait wait) => wait switch
    {
        { Kind: WaitKind.NotNeeded } => "it is not needed: without it no night is worse",
        { Kind: WaitKind.CanWait, Latest: { } latest, Next: { } next } =>
            $"it can wait until {ClockText.DayClock(latest)}; on {ClockText.DayClock(next)}, the next open day, it is too late: {Worse(wait.Worse!)}",
        { Kind: WaitKind.CanWait, Latest: { } latest } => $"it can wait until {ClockText.DayClock(latest)}, the last open day before the coach moves on",
        { Kind: WaitKind.CannotWait, Next: { } next } => $"it cannot wait: on {ClockText.DayClock(next)}, the next open day, it is too late, and {Worse(wait.Worse!)}",
        { Kind: WaitKind.NoLaterDay } => $"it cannot wait: there is no later open day before the coach moves on, and without it {Worse(wait.Worse!)}",
        { Kind: WaitKind.NotKnown } => "how long it can wait is not known, for the ledger of a run with it moved does not close",
        _ => "nothing is said of waiting",
    };

    private static string Worse(NightReport night)
        => $"{ClockText.NightName(night)}, {(night.Verdict == Verdict.Holds ? "ends early" : VerdictWords.Clause(night.Verdict))}";

    private static string LastDay(TripRefill refill, TripReport report)
        => report.Run.Scenario.Rig.Cylinders[refill.Refill.Cylinder].RequalifyBy?.ToString("d MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture) ?? "its date";
}
