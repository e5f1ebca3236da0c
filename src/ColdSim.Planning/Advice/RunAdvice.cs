using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.Planning.Advice;

/// <summary>What a person wants to hear beside a run: why it fails and what would hold, and what its answer hangs on.</summary>
/// <param name="Explanation">Why it fails and what would hold; null where all nights hold.</param>
/// <param name="Guesses">The uncertain inputs that move the answer, the first most.</param>
public sealed record RunAdvice(Explanation? Explanation, IReadOnlyList<InputEffect> Guesses)
{
    /// <summary>Runs the scenario again as often as that needs.</summary>
    /// <param name="report">The run.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many runs at once; null takes one for each processor. The outcome does not depend on it.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="Nights.LedgerOpenException">The ledger of a run does not close.</exception>
    public static RunAdvice Of(RunReport report, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        Explanation? why = report.Summary.Verdict == Verdict.Holds ? null : Explanation.Of(report.Scenario, null, finished, workers, cancel);
        return new RunAdvice(why, InputSensitivity.Of(report.Scenario, report.Summary, workers, cancel));
    }
}
