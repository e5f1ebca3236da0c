using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Nights;

/// <summary>The part of a trial run that a search needs.</summary>
/// <param name="Holds">Whether every night holds and no cylinder ended the run.</param>
/// <param name="Verdict">What fails the first night that does not hold; holds where none fails.</param>
/// <param name="FirstFailure">When that began; null where all hold, and of a trial that stopped there.</param>
/// <param name="Blanket_J">Electricity of the blankets. [J]</param>
internal sealed record TrialOutcome(bool Holds, Verdict Verdict, DateTimeOffset? FirstFailure, double Blanket_J)
{
    /// <summary>When gas was first short, or voltage gone, so that a night fails; null where neither fails one, and of a trial that stopped there.</summary>
    public DateTimeOffset? SupplyFails { get; init; }

    /// <summary>Whether the trial says nothing of the supply: it stopped early, or a cylinder ended it.</summary>
    public bool IsCutShort { get; init; }

    /// <summary>How badly the nights went that were run.</summary>
    public Harm Harm { get; init; } = Harm.None;

    /// <summary>What is left at the end of the run. [kg]</summary>
    public double LeftAtEnd_kg { get; init; }

    /// <summary>The lowest inside air; infinite without a coach. [K]</summary>
    public double InsideLow_K { get; init; } = double.PositiveInfinity;

    /// <summary>How many nights were run.</summary>
    public int Nights { get; init; }

    private static TrialOutcome Fails { get; } = new(false, Verdict.Holds, null, double.NaN) { IsCutShort = true };

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
        double supply_s = double.PositiveInfinity, blanket_J = 0, inside_K = double.PositiveInfinity;
        LeanNight? failed = null;
        Harm harm = Harm.None;
        foreach (LeanNight night in run.Nights)
        {
            blanket_J += night.Blanket_J;
            harm += night.Harm;
            inside_K = Math.Min(inside_K, night.InsideLow_K);
            supply_s = Math.Min(supply_s, night.SupplyFails_s);
            if (night.Verdict != Verdict.Holds) failed ??= night;
        }

        DateTimeOffset? At(double time_s) => double.IsFinite(time_s) ? scenario.Start.AddSeconds(time_s) : null;
        return new TrialOutcome(run.Holds, failed?.Verdict ?? Verdict.Holds, At(failed?.FirstFailure_s ?? double.NaN), blanket_J)
        {
            SupplyFails = At(supply_s),
            Harm = harm,
            LeftAtEnd_kg = run.Nights[^1].LeftAtEnd_kg,
            InsideLow_K = inside_K,
            Nights = run.Nights.Count,
        };
    }
}
