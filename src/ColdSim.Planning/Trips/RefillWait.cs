using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>How long a refill can be put off.</summary>
public enum WaitKind
{
    /// <summary>Without it no night goes worse.</summary>
    NotNeeded,

    /// <summary>It can wait until a later day.</summary>
    CanWait,

    /// <summary>On the next open day at that stop it would be too late.</summary>
    CannotWait,

    /// <summary>There is no later open day at that stop.</summary>
    NoLaterDay,

    /// <summary>It is refused, so there is nothing to wait for.</summary>
    Refused,

    /// <summary>The ledger of a run with it moved does not close, so nothing may be said.</summary>
    NotKnown,
}

/// <summary>The latest day to which a refill can be put off, found by running the trip with it moved, all else as planned.</summary>
/// <param name="Kind">How it is.</param>
/// <param name="Latest">The latest instant at which it is early enough; null where there is none but its own.</param>
/// <param name="Next">The next open day, on which it would be too late; null where the stop ends before.</param>
/// <param name="Worse">The first night that then goes worse than planned; null where there is none.</param>
public sealed record RefillWait(WaitKind Kind, DateTimeOffset? Latest = null, DateTimeOffset? Next = null, NightReport? Worse = null);

/// <summary>Finds how long a refill can wait, with the whole engine.</summary>
/// <remarks>
/// A day is early enough if no night of the trip goes worse than planned: a night that holds must hold, and one that fails must not do
/// more harm. Days are tried one after the other, so that every day up to the latest is good, too.
/// </remarks>
internal sealed class RefillWaitSearch(
    Scenario scenario, RunWithRefills planned, IProgress<int>? finished, Func<Scenario, CancellationToken, RunReport>? run = null)
{
    private readonly Func<Scenario, CancellationToken, RunReport> _run = run ?? NightRun.Of;
    private int _runs;

    /// <summary>A refill's.</summary>
    /// <param name="place">Its place among the refills.</param>
    /// <param name="cancel">Stops the search.</param>
    public RefillWait Of(int place, CancellationToken cancel)
    {
        try
        {
            return Search(place, cancel);
        }
        catch (LedgerOpenException)
        {
            return new RefillWait(WaitKind.NotKnown);
        }
    }

    private RefillWait Search(int place, CancellationToken cancel)
    {
        Trip trip = scenario.Trip!;
        Refill refill = trip.Refills[place];
        if (place >= planned.Refills.Count || planned.Refills[place].Refused) return new RefillWait(WaitKind.Refused);
        NightReport? without = Worse(trip.Refills.Where(r => !ReferenceEquals(r, refill)), cancel);
        if (without is null) return new RefillWait(WaitKind.NotNeeded);
        DateTimeOffset? latest = null;
        foreach (DateTimeOffset day in LaterDays(trip, refill))
        {
            if (Worse(trip.Refills.Select(r => ReferenceEquals(r, refill) ? r with { At = day } : r), cancel) is { } worse)
                return new RefillWait(latest is null ? WaitKind.CannotWait : WaitKind.CanWait, latest, day, worse);
            latest = day;
        }

        return latest is null ? new RefillWait(WaitKind.NoLaterDay, null, null, without) : new RefillWait(WaitKind.CanWait, latest);
    }

    private static IEnumerable<DateTimeOffset> LaterDays(Trip trip, Refill refill)
    {
        TripSegment here = TripSegment.Of(trip).First(s => s.Has(refill.At));
        for (DateTimeOffset day = refill.At.AddDays(1); here.Has(day); day = day.AddDays(1))
        {
            if (!refill.Closed.Has(DateOnly.FromDateTime(day.DateTime))) yield return day;
        }
    }

    // The first night that goes worse than planned with other refills; null where none does.
    private NightReport? Worse(IEnumerable<Refill> refills, CancellationToken cancel)
    {
        Trip trip = scenario.Trip! with { Refills = [.. refills.OrderBy(r => r.At)] };
        RunReport report = _run(scenario with { Legs = TripLegs.Of(trip, scenario.Rig.Cylinders) }, cancel);
        finished?.Report(Interlocked.Increment(ref _runs));
        if (!report.Ledger.Closes) throw new LedgerOpenException(report.Ledger);
        IReadOnlyList<NightReport> nights = planned.Report.Nights;
        for (int i = 0; i < Math.Min(nights.Count, report.Nights.Count); i++)
        {
            if (IsWorse(report.Nights[i], nights[i])) return report.Nights[i];
        }

        bool cutShort = report.End != RunEnd.Complete && report.Nights.Count < nights.Count;
        return cutShort ? report.Nights[^1] : null;
    }

    private static bool IsWorse(NightReport night, NightReport planned)
        => night.Verdict != Verdict.Holds && (planned.Verdict == Verdict.Holds || HarmOrder.Only.Compare(night.Harm, planned.Harm) > 0);
}
