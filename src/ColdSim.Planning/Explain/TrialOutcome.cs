using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Explain;

/// <summary>The part of a trial run's report that a search needs.</summary>
/// <param name="FirstShort">When gas was first short, or voltage gone, in a night that does not hold; null where all hold.</param>
/// <param name="Summary">The run in one row; null where the cylinder could not start.</param>
/// <param name="Stopped">Whether a cylinder ended the run or could not start, too full or too hot: then the trial says nothing about supply.</param>
internal sealed record TrialOutcome(DateTimeOffset? FirstShort, RunSummary? Summary, bool Stopped)
{
    /// <summary>Whether every night holds and no cylinder ended the run.</summary>
    public bool Holds => FirstShort is null && !Stopped && Summary is { Verdict: Verdict.Holds };

    /// <summary>Runs a scenario; its curves are let go at once.</summary>
    /// <exception cref="LedgerOpenException">Its ledger does not close.</exception>
    public static TrialOutcome Of(Scenario scenario, CancellationToken cancel)
    {
        if (NightRun.Try(scenario, cancel).Report is not { } report) return new TrialOutcome(null, null, true);
        if (!report.Ledger.Closes) throw new LedgerOpenException(report.Ledger);
        bool stopped = report.End is RunEnd.LiquidFull or RunEnd.ReliefPressure;
        return new TrialOutcome(stopped ? null : report.Summary.FirstFailure, report.Summary, stopped);
    }
}
