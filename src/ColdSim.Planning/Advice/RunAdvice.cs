using ColdSim.Planning.Actions;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.Planning.Advice;

/// <summary>What a person wants to hear beside a run: why it fails, what to do, and what its answer hangs on.</summary>
/// <param name="Explanation">Why it fails; null where all nights hold.</param>
/// <param name="Plan">What to do, or what a run that holds can still bear; null where that is not wanted.</param>
/// <param name="Guesses">The uncertain inputs that move the answer, the first most.</param>
public sealed record RunAdvice(Explanation? Explanation, ActionPlan? Plan, IReadOnlyList<InputEffect> Guesses)
{
    /// <summary>What hangs on the gas that the regulator gives below its minimum inlet; null where nothing does.</summary>
    public MinimumInletEffect? BelowMinimum { get; init; }

    /// <summary>Runs the scenario again as often as that needs.</summary>
    /// <param name="report">The run.</param>
    /// <param name="grid">The amounts that the person can set or buy.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many runs at once; null takes one for each processor. The outcome does not depend on it.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="Nights.LedgerOpenException">The ledger of a run does not close.</exception>
    public static RunAdvice Of(
        RunReport report, AmountGrid grid, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        Explanation? why = report.Summary.Verdict == Verdict.Holds ? null : Explanation.Of(report, grid, finished, workers, cancel);
        ActionPlan? plan = why is null ? ActionPlan.Of(report, grid, finished, workers, cancel) : why.Plan;
        return new RunAdvice(why, plan, InputSensitivity.Of(report.Scenario, report.Summary, workers, cancel))
        {
            BelowMinimum = MinimumInletEffect.Of(report, cancel),
        };
    }
}
