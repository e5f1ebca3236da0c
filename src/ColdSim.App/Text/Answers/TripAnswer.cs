using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text.Answers;

/// <summary>A trip as an answer: whether it holds, what it costs, when to refill at the latest, and the nights that are tightest.</summary>
internal static class TripAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="trip">The trip.</param>
    /// <param name="guesses">What it hangs on.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(TripReport trip, IReadOnlyList<InputEffect> guesses, UnitStyle units)
    {
        RunReport run = trip.Run;
        Answer nights = NightsAnswer.Of(run, null, units);
        return nights with
        {
            Consequences = [.. nights.Consequences, Comes(trip, units)],
            ToDo = trip.Refills.Count > 0 ? "Refills:" : "",
            Actions = [.. trip.Refills.Select((r, i) => Refill(r, i, trip, units))],
            AboutGuesses = GuessText.About,
            Guesses = GuessText.Lines(guesses, run.Scenario, run.Summary.Verdict == Verdict.Holds, units),
            Caution = Caution(trip, nights),
        };
    }

    private static string Comes(TripReport trip, UnitStyle units)
    {
        RunSummary summary = trip.Run.Summary;
        string money = trip.Money.Cost is { } cost ? $", {TripTotals.Sum(cost, trip.Run.Scenario.Prices.Currency)} in all" : "";
        string electricity = summary.BlanketEnergy.WattHours >= 1 ? $", {UnitStyle.Number(summary.BlanketEnergy.WattHours, 0)} Wh for blankets" : "";
        return $"It takes {units.RoundMass(summary.GasUsed.Kilograms)} of gas{money}{electricity}.";
    }

    private static string Refill(TripRefill refill, int place, TripReport trip, UnitStyle units)
    {
        string at = refill.Refill.Station.Length > 0 ? $" at {refill.Refill.Station}" : "";
        string start = $"R{place + 1} {ClockText.DayClock(refill.Refill.At)}, {trip.Run.Scenario.Rig.NameOf(refill.Refill.Cylinder)}{at}";
        if (refill.Outcome is not { } outcome)
            return $"{start}: not reached.";
        string paid = outcome.Paid is { } money and > 0 ? $" for {TripTotals.Sum(money, trip.Run.Scenario.Prices.Currency)}" : "";
        return outcome.Refused ? $"{start}: refused, past its requalification date." : $"{start}: {units.Mass(outcome.Bought_kg)}{paid}. {Wait(refill.Wait)}";
    }

    private static string Wait(RefillWait wait) => wait switch
    {
        { Kind: WaitKind.NotNeeded } => "Not needed.",
        { Kind: WaitKind.CanWait, Latest: { } latest } => $"Can wait until {ClockText.DayClock(latest)}.",
        { Kind: WaitKind.CannotWait, Next: { } next, Worse: { } worse } => $"Cannot wait: filled {ClockText.DayClock(next)}, {ClockText.NightShort(worse)} fails.",
        { Kind: WaitKind.NoLaterDay, Worse: { } worse } => $"Cannot wait: without it {ClockText.NightShort(worse)} fails.",
        _ => "",
    };

    private static string Caution(TripReport trip, Answer nights) => trip.Refills switch
    {
        { } refills when refills.Any(r => r.Outcome is { Refused: false, After.IsOverWeight: true })
            => "Caution: cold gas filled by volume may weigh too much: have it filled by weight.",
        { } refills when refills.Any(r => r.TooHeavy) => "Caution: a full cylinder here is more than one person can carry: two people, a cart.",
        { Count: > 0 } => "Caution: an estimate. A closed road or colder nights leave no margin: keep some.",
        _ => nights.Caution,
    };
}
