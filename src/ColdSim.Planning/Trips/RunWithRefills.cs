using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Trips;

/// <summary>A run with the outcomes of its refills.</summary>
/// <param name="Report">The run.</param>
/// <param name="Refills">In order; fewer than planned where the run ended early.</param>
public sealed record RunWithRefills(RunReport Report, IReadOnlyList<RefillOutcome> Refills)
{
    /// <summary>Runs a scenario.</summary>
    /// <param name="scenario">The scenario; its legs are built again from its trip, where it has one.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="CannotRunException">The rig cannot start.</exception>
    public static RunWithRefills Of(Scenario scenario, CancellationToken cancel = default)
    {
        (RunWithRefills? run, CannotStart? reason) = Try(scenario, cancel);
        return run ?? throw new CannotRunException(reason!.Message);
    }

    /// <summary>Runs a scenario, or says why its rig cannot start; one of the two is null.</summary>
    /// <param name="scenario">The scenario; its legs are built again from its trip, where it has one.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static (RunWithRefills? Run, CannotStart? CannotStart) Try(Scenario scenario, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        List<RefillOutcome> refills = [];
        if (scenario.Trip is { } trip) scenario = scenario with { Legs = TripLegs.Of(trip, scenario.Rig.Cylinders, refills.Add) };
        RunOutcome outcome = NightRun.Try(scenario, cancel);
        return outcome.Report is { } report ? (new RunWithRefills(report, refills), null) : (null, outcome.CannotStart);
    }
}
