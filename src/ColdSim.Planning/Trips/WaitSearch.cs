using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>Finds how long a refill can wait, with the whole engine.</summary>
/// <remarks>
/// A day is late enough if no night of the trip goes worse than planned: a night that holds must hold, one that runs short must not
/// run dry. Days are tried one after the other, so that every day up to the latest is good, too.
/// </remarks>
internal sealed class WaitSearch(
    Scenario scenario, RecordedRun planned, IProgress<int>? finished, Func<Scenario, CancellationToken, RunReport>? run = null)
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
        Stretch here = Stretch.Of(trip).First(s => s.Has(refill.At));
        for (DateTimeOffset day = refill.At.AddDays(1); here.Has(day); day = day.AddDays(1))
        {
            if (!refill.Closed.Has(DateOnly.FromDateTime(day.DateTime))) yield return day;
        }
    }

    // The first night that goes worse than planned with other refills; null where none does.
    private NightReport? Worse(IEnumerable<Refill> refills, CancellationToken cancel)
    {
        Trip trip = scenario.Trip! with { Refills = [.. refills.OrderBy(r => r.At)] };
        RunReport report = _run(scenario with { Legs = trip.Legs(scenario.Rig.Cylinders) }, cancel);
        finished?.Report(Interlocked.Increment(ref _runs));
        if (!report.Ledger.Closes) throw new LedgerOpenException(report.Ledger);
        IReadOnlyList<NightReport> nights = planned.Report.Nights;
        for (int i = 0; i < Math.Min(nights.Count, report.Nights.Count); i++)
        {
            if (report.Nights[i].Verdict > nights[i].Verdict) return report.Nights[i];
        }

        bool cutShort = report.End != RunEnd.Complete && report.Nights.Count < nights.Count;
        return cutShort ? report.Nights[^1] : null;
    }
}
