using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>A run, and what came of its refills.</summary>
/// <param name="Report">The run.</param>
/// <param name="Refills">In order; fewer than planned where the run ended early.</param>
public sealed record RecordedRun(RunReport Report, IReadOnlyList<RefillOutcome> Refills)
{
    /// <summary>Runs a scenario.</summary>
    /// <param name="scenario">The scenario; its legs are made anew from its trip, where it has one.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">See <see cref="NightRun.Of"/>.</exception>
    public static RecordedRun Of(Scenario scenario, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        if (scenario.Trip is not { } trip) return new RecordedRun(NightRun.Of(scenario, cancel), []);
        List<RefillOutcome> refills = [];
        IReadOnlyList<Leg> legs = TripLegs.Of(trip, scenario.Rig.Cylinders, refills.Add);
        return new RecordedRun(NightRun.Of(scenario with { Legs = legs }, cancel), refills);
    }
}
