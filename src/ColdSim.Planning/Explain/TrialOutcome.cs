using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Explain;

/// <summary>The part of a trial run that a search needs.</summary>
/// <param name="Holds">Whether every night holds and no cylinder ended the run.</param>
/// <param name="FirstShort">When gas was first short, or voltage gone, in a night that does not hold; null where all hold, and of a trial that stopped there.</param>
/// <param name="Blanket_J">Electricity of the blankets. [J]</param>
internal sealed record TrialOutcome(bool Holds, DateTimeOffset? FirstShort, double Blanket_J)
{
    private static TrialOutcome Fails { get; } = new(false, null, double.NaN);

    /// <summary>Runs a scenario to its end, without curves.</summary>
    /// <exception cref="LedgerOpenException">Its ledger does not close.</exception>
    public static TrialOutcome Of(Scenario scenario, CancellationToken cancel)
        => Outcome(scenario, NightRun.Lean(scenario, UnwatchedRun.Only, cancel));

    /// <summary>Runs a scenario to its end, or until a night is known not to hold.</summary>
    /// <exception cref="LedgerOpenException">Its ledger does not close.</exception>
    public static TrialOutcome WhileItHolds(Scenario scenario, CancellationToken cancel)
        => NightRun.LeanWhileItHolds(scenario, cancel) is { } run ? Outcome(scenario, run) : Fails;

    // A cylinder that ends the run, or cannot start, too full or too hot, says nothing about supply.
    private static TrialOutcome Outcome(Scenario scenario, LeanRun run)
    {
        if (run.Nights.Count == 0) return Fails;
        if (!run.Ledger.Closes) throw new LedgerOpenException(run.Ledger);
        if (run.End is RunEnd.LiquidFull or RunEnd.ReliefPressure) return Fails;
        double failure_s = double.NaN, blanket_J = 0;
        foreach (LeanNight night in run.Nights)
        {
            blanket_J += night.Blanket_J;
            if (double.IsNaN(failure_s)) failure_s = night.FirstFailure_s;
        }

        return new TrialOutcome(run.Holds, double.IsNaN(failure_s) ? null : scenario.Start.AddSeconds(failure_s), blanket_J);
    }
}
