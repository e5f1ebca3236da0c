using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Explain;

/// <summary>What counts of a run made to find something out.</summary>
/// <param name="FirstShort">When gas was first short, or voltage gone, in a night that does not hold; null where all hold.</param>
/// <param name="Summary">The run in one row; null where the cylinder could not start.</param>
/// <param name="Stopped">Whether the cylinder itself ended the run, too full or too hot: it proves nothing.</param>
internal sealed record TrialOutcome(DateTimeOffset? FirstShort, RunSummary? Summary, bool Stopped)
{
    /// <summary>Whether every night holds and the run proves it.</summary>
    public bool Holds => FirstShort is null && !Stopped && Summary is { Verdict: Verdict.Holds };

    /// <summary>Runs a scenario; its curves are let go at once.</summary>
    /// <exception cref="LedgerOpenException">Its books do not close.</exception>
    public static TrialOutcome Of(Scenario scenario, CancellationToken cancel)
    {
        try
        {
            RunReport report = NightRun.Of(scenario, cancel);
            if (!report.Ledger.Closes) throw new LedgerOpenException(report.Ledger);
            bool proves = report.End is not (RunEnd.LiquidFull or RunEnd.ReliefPressure);
            return new TrialOutcome(proves ? report.Summary.FirstFailure : null, report.Summary, !proves);
        }
        catch (ArgumentException)
        {
            // The scenario itself ran, so this one cannot start: full of liquid or at its relief pressure.
            return new TrialOutcome(null, null, true);
        }
    }
}
