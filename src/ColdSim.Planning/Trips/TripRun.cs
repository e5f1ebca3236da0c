using ColdSim.Model.Cylinder;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Search;
using UnitsNet;

namespace ColdSim.Planning.Trips;

/// <summary>Runs a trip and asks of every refill how long it can wait.</summary>
public static class TripRun
{
    /// <summary>Runs the trip of a scenario; one without stops is a trip that stays in one place.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="finished">Receives the number of runs that are done; may be called from several threads at once.</param>
    /// <param name="workers">How many at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="CannotRunException">The rig cannot start.</exception>
    public static TripReport Of(Scenario scenario, IProgress<int>? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Trip trip = scenario.Trip ?? Trip.InOnePlace(scenario);
        scenario = scenario with { Trip = trip };
        RunWithRefills run = RunWithRefills.Of(scenario, cancel);
        RefillWait[] waits = run.Report.Ledger.Closes ? Waits(scenario, run, finished, workers, cancel) : new RefillWait[trip.Refills.Count];
        return new TripReport
        {
            Trip = trip,
            Run = run.Report,
            Nights = [.. run.Report.Nights.Select(n => Night(n, run.Report, trip))],
            Refills = [.. trip.Refills.Select((r, i) => Refill(r, run.Refills.ElementAtOrDefault(i), waits[i], scenario))],
            Money = TripMoney.Of(run),
        };
    }

    private static RefillWait[] Waits(Scenario scenario, RunWithRefills run, IProgress<int>? finished, int? workers, CancellationToken cancel)
    {
        RefillWaitSearch search = new(scenario, run, finished);
        return ParallelMap.Of(scenario.Trip!.Refills.Count, i => search.Of(i, cancel), workers, cancel);
    }

    // A night belongs to the stop where the coach is at its midnight; what was run of it may begin or end before.
    private static TripNight Night(NightReport night, RunReport run, Trip trip)
    {
        DateTimeOffset midnight = new(night.Evening.AddDays(1).ToDateTime(TimeOnly.MinValue), night.From.Offset);
        DateTimeOffset at = midnight < night.From ? night.From : midnight >= night.To ? night.To.AddTicks(-1) : midnight;
        TripSegment? segment = TripSegment.Of(trip).FirstOrDefault(s => s.Has(at));
        return new TripNight
        {
            Night = night,
            Stop = segment is null || segment.OnTheRoad ? null : segment.Stop,
            Margin = Margin.Of(run, night),
            Refills = [.. Enumerable.Range(0, trip.Refills.Count).Where(i => trip.Refills[i].At >= night.From && trip.Refills[i].At < night.To)],
        };
    }

    private static TripRefill Refill(Refill refill, RefillOutcome? outcome, RefillWait? wait, Scenario scenario)
    {
        CylinderSpecification cylinder = scenario.Rig.Cylinders[refill.Cylinder];
        bool carried = outcome is { Refused: false } && cylinder.Orientation == Orientation.Upright;
        double gross_kg = cylinder.Tare_kg + (outcome?.After.Propane_kg ?? 0);
        return new TripRefill
        {
            Refill = refill,
            Outcome = outcome,
            Wait = wait ?? new RefillWait(WaitKind.Refused),
            Carried = carried ? Mass.FromKilograms(gross_kg) : null,
            TooHeavy = carried && gross_kg > scenario.Trip!.Carries_kg,
        };
    }
}
