using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Nights;

/// <summary>How a night went, in the few numbers that a run among a thousand is asked for. SI units.</summary>
/// <param name="Verdict">How it went.</param>
/// <param name="LeftAtDawn_kg">Propane left at dawn; NaN where the run does not reach it. [kg]</param>
/// <param name="LeftAtEnd_kg">Propane left at the last instant counted. [kg]</param>
/// <param name="Harm">How badly it went.</param>
/// <param name="Dry_s">When it was dry, since the run's start; NaN where it was not. [s]</param>
/// <param name="FirstFailure_s">When the cause that names its verdict began, since the run's start; NaN where it holds. [s]</param>
/// <param name="SupplyFails_s">When the first lack of gas or voltage began that fails it; infinite where neither does. [s]</param>
/// <param name="Blanket_J">Electricity of the blankets. [J]</param>
/// <param name="InsideLow_K">The lowest inside air; infinite without a coach. [K]</param>
internal sealed record LeanNight(
    Verdict Verdict, double LeftAtDawn_kg, double LeftAtEnd_kg, Harm Harm, double Dry_s, double FirstFailure_s, double SupplyFails_s,
    double Blanket_J, double InsideLow_K)
{
    /// <summary>The night of a tally.</summary>
    public static LeanNight Of(NightTally t, NightCriteria criteria)
    {
        (Verdict verdict, double failure_s) = t.Harm.Judge(criteria);
        return new LeanNight(
            verdict, t.PropaneAtDawn_kg, t.PropaneAtEnd_kg, t.Harm.Harm, t.Harm.Dry_s, failure_s, t.Harm.SupplyFails_s(criteria), t.Blanket_J, t.InsideLow_K);
    }
}

/// <summary>A run without curves and events.</summary>
/// <param name="Nights">Night by night; none where a cylinder cannot start.</param>
/// <param name="End">Why it ended.</param>
/// <param name="Ledger">How well it closes.</param>
internal sealed record LeanRun(IReadOnlyList<LeanNight> Nights, RunEnd End, LedgerBalance Ledger)
{
    /// <summary>Whether all nights hold and the cylinder did not end the run.</summary>
    public bool Holds => Nights.Count > 0 && Nights.All(n => n.Verdict == Verdict.Holds) && End is not (RunEnd.LiquidFull or RunEnd.ReliefPressure);
}
