using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Limits;
using ColdSim.Tests.App.Text;

namespace ColdSim.Tests.Planning.Limits;

/// <summary>A limits chart made up by hand: nothing in it was computed.</summary>
internal static class HandLimits
{
    private static readonly double[] Fills = [0.1, 0.25, 0.5, 0.75, 1];

    /// <summary>Every kind of cell.</summary>
    public static LimitChart Chart { get; } = new()
    {
        Scenario = InventedRuns.Scenario,
        Night = new StandardNight(InventedRuns.Scenario),
        Axis = LimitAxis.Fahrenheit,
        Fills = Fills,
        Columns = [.. RigVariant.Of(InventedRuns.Rig).Select(s => new LimitColumn(s, [.. Fills.Select((f, i) => Cell(f, Steps(s.Kind)[i]))], Cell(0.717, Steps(s.Kind)[3] - 1)))],
    };

    private static int[] Steps(RigVariantKind kind) => kind switch
    {
        RigVariantKind.Bare => [-1, 20, 45, 60, 70],
        RigVariantKind.Blanket => [10, 50, 117, 117, 117],
        RigVariantKind.SecondCylinder => [15, 45, 62, 75, 81],
        _ => [25, 90, 117, 117, 117],
    };

    private static LimitCell Cell(double fill_frac, int step) => new()
    {
        Fill_frac = fill_frac,
        Kind = step < 0 ? LimitKind.NotAtWarmest : step == LimitAxis.Fahrenheit.Steps ? LimitKind.HoldsAtColdest : LimitKind.Found,
        Step = step,
        Low_K = step < 0 ? double.NaN : LimitAxis.Fahrenheit.Low_K(step),
        Contents_kg = fill_frac * 9.07,
        Emptied = step < 25,
        FailsColder = step > 80 && step < LimitAxis.Fahrenheit.Steps ? Verdict.FurnaceTooSmall : Verdict.GasShort,
        Ledger = step < 0 ? null : new LedgerBalance(0.02, 3e-10, -0.1, -2e-10, 0, 0, 1e-14, 1.2e-15),
        InsideLow_K = step < 0 ? double.NaN : step > 80 ? 281 : 289.5,
        Used_kg = step < 0 ? double.NaN : 2.5,
        Blanket_J = step < 0 ? double.NaN : 3.6e6,
    };
}
