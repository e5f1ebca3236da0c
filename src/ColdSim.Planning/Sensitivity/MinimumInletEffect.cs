using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Sensitivity;

/// <summary>What becomes of a run if the regulator gives nothing below the minimum inlet on its plate, where the run counts on what it gives there.</summary>
/// <param name="MinimumInlet_Pa">The minimum inlet. [Pa gauge]</param>
/// <param name="Holds">Whether the run then holds.</param>
/// <param name="FailsAt">When it then first fails; null where it holds or no instant is known.</param>
public sealed record MinimumInletEffect(double MinimumInlet_Pa, bool Holds, DateTimeOffset? FailsAt)
{
    private const double LeastChange_s = 600;

    /// <summary>Runs the scenario once more with a regulator that shuts there; null where gas never flows below the minimum inlet, or nothing changes by it.</summary>
    /// <param name="report">The run.</param>
    /// <param name="cancel">Stops the further run.</param>
    public static MinimumInletEffect? Of(RunReport report, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (!report.Nights.Any(n => n.BelowMinimumInlet.Seconds > 0)) return null;
        Scenario scenario = report.Scenario;
        Scenario shutting = InputErrors.WithRig(scenario, scenario.Rig with { Regulator = scenario.Rig.Regulator with { ShutsBelowMinimum = true } });
        LeanRun run = NightRun.Lean(shutting, UnwatchedRun.Only, cancel);
        double failure_s = run.Nights.FirstOrDefault(n => !double.IsNaN(n.FirstFailure_s))?.FirstFailure_s ?? double.NaN;
        DateTimeOffset? failsAt = double.IsNaN(failure_s) ? null : scenario.Start.AddSeconds(failure_s);
        bool same = run.Holds == (report.Summary.Verdict == Verdict.Holds)
            && (run.Holds || (report.Summary.FirstFailure is { } now && failsAt is { } then && Math.Abs((now - then).TotalSeconds) < LeastChange_s));
        return same ? null : new MinimumInletEffect(scenario.Rig.MinimumInlet_Pa, run.Holds, failsAt);
    }
}
