using ColdSim.Model.Engine;

namespace ColdSim.Planning.Capacity;

/// <summary>What would fail a little more than a capacity.</summary>
public enum CapacityEnd
{
    /// <summary>The liquid gets too cold: its pressure no longer carries the draw through the regulator.</summary>
    TooCold,

    /// <summary>The gas is used up.</summary>
    Emptied,

    /// <summary>The regulator passes no more, however warm the cylinder is.</summary>
    Regulator,
}

/// <summary>The greatest constant draw that cylinders feed in full for a time, found by running it. SI units.</summary>
/// <param name="Draw_W">The draw, as gross heat; 0 where nothing is fed for so long. [W]</param>
/// <param name="End">What would fail a little more.</param>
/// <param name="Liquid_K">Liquid of the feeding cylinder at the end; NaN where nothing is fed. [K]</param>
/// <param name="Left_kg">Gas left in all cylinders at the end; NaN where nothing is fed. [kg]</param>
/// <param name="Ledger">How well energy and mass close in its run; null where nothing is fed.</param>
/// <remarks>
/// The draw that is stated was run and is fed for the whole time; one 1 % greater is not. Contents fall and frost grows as they do in any run, and the end
/// is the regulator's need for that draw, not the pressure of the air around.
/// </remarks>
internal sealed record LastingDraw(double Draw_W, CapacityEnd End, double Liquid_K, double Left_kg, LedgerBalance? Ledger)
{
    /// <summary>How much more is known not to be fed.</summary>
    public const double Tolerance_frac = 0.01;

    // Looked on so much longer than the time that is wanted, how long a draw is fed says how far it is from the one that is looked for.
    private const double Ahead = 2;

    private const double Least_W = 1;
    private const int MostTries = 40;

    /// <summary>Finds it.</summary>
    /// <param name="conditions">Cylinders, weather and start.</param>
    /// <param name="time_s">How long it has to be fed; the weather must last as long. [s]</param>
    /// <param name="guess_W">Where to look first. [W]</param>
    /// <param name="most_W">What the regulator passes at most; infinite where that is not known. [W]</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static LastingDraw For(DrawConditions conditions, double time_s, double guess_W, double most_W = double.PositiveInfinity, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(time_s);
        double longest_s = Math.Min(Ahead * time_s, (conditions.Weather.Last - conditions.Start).TotalSeconds);
        (double Log, double Excess)? fed = null, failed = null;
        DrawOutcome end = default;
        double most = Math.Log(most_W) - 0.5 * Tolerance_frac, log = Math.Min(most, Math.Log(Math.Max(Least_W, guess_W)));
        for (int tries = 0; tries < MostTries && !(fed is { } low && failed is { } high && high.Log - low.Log < Tolerance_frac); tries++)
        {
            DrawOutcome outcome = DrawRun.Of(conditions, Math.Exp(log), longest_s, cancel);
            (double Log, double Excess) point = (log, Math.Log(Math.Max(outcome.Fed_s, 1) / time_s));
            if (outcome.Failed && outcome.Fed_s < time_s) (failed, end) = (point, outcome);
            else fed = point;
            if (fed is null && log <= Math.Log(Least_W)) return None();
            if (fed is not null && log >= most) break;
            log = Math.Min(most, Next(fed, failed, tries));
        }

        if (fed is not { } found) return None();
        double draw_W = Math.Exp(found.Log);
        DrawOutcome whole = DrawRun.Of(conditions, draw_W, time_s, cancel);
        double legal_kg = 0;
        for (int i = 0; i < conditions.Rig.Cylinders.Count; i++) legal_kg += conditions.Rig.Cylinders[i].LegalFill_kg;
        CapacityEnd why = failed is null || end.Fed_s <= 0 ? CapacityEnd.Regulator
            : end.Left_kg <= NightCriteria.LastOfGas.DecimalFractions * legal_kg ? CapacityEnd.Emptied : CapacityEnd.TooCold;
        return new LastingDraw(draw_W, why, whole.Liquid_K, whole.Left_kg, whole.Ledger);
    }

    // The time that a draw is fed falls with the draw nearly along a straight line in logarithms. Where that does not halve the bracket in two tries, its middle is taken.
    private static double Next((double Log, double Excess)? fed, (double Log, double Excess)? failed, int tries)
    {
        if (fed is not { } low) return Math.Max(Math.Log(Least_W), failed!.Value.Log + Math.Clamp(failed.Value.Excess, -3, -0.1));
        if (failed is not { } high) return low.Log + Math.Clamp(low.Excess, 0.1, 3);
        if (tries % 3 == 2) return 0.5 * (low.Log + high.Log);
        double part = low.Excess / (low.Excess - high.Excess), width = high.Log - low.Log;
        // A little on the far side of where the line crosses, so that the bracket closes from both sides.
        double aim = low.Log + part * width + (part < 0.5 ? 1 : -1) * 0.4 * Tolerance_frac;
        return Math.Clamp(aim, low.Log + 0.1 * Math.Min(width, Tolerance_frac), high.Log - 0.1 * Math.Min(width, Tolerance_frac));
    }

    private static LastingDraw None() => new(0, CapacityEnd.TooCold, double.NaN, double.NaN, null);
}
