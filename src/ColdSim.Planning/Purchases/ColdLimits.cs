using ColdSim.Planning.Limits;

namespace ColdSim.Planning.Purchases;

/// <summary>The coldest standard night that a set-up is fed through, by fill, and the fill that a night needs.</summary>
/// <param name="Cells">A quarter, half and all full.</param>
public sealed record ColdLimits(IReadOnlyList<LimitCell> Cells)
{
    /// <summary>The fills at which limits are found.</summary>
    public static IReadOnlyList<double> Fills { get; } = [0.25, 0.5, 1];

    /// <summary>The part of the legal filling that is never counted on.</summary>
    public const double Reserve_frac = 0.05;

    /// <summary>The part of the legal filling that has to be there at dusk of a night; infinite where not even a full set-up is
    /// fed.</summary>
    /// <param name="low_K">The night's low. [K]</param>
    /// <remarks>Between the fills that were run, limits lie nearly on a straight line over the logarithm of the fill; below a quarter that
    /// line goes on.</remarks>
    public double NeededFill_frac(double low_K)
    {
        if (low_K < Limit_K(Cells[^1])) return double.PositiveInfinity;
        for (int i = Cells.Count - 1; i > 0; i--)
        {
            double fuller_K = Limit_K(Cells[i]), emptier_K = Limit_K(Cells[i - 1]);
            if (low_K >= emptier_K && i > 1) continue;
            if (double.IsInfinity(emptier_K) || double.IsInfinity(fuller_K))
                return low_K >= emptier_K ? Reserve_frac : Cells[i].Fill_frac;
            double slope_K = (emptier_K - fuller_K) / Math.Log(Cells[i].Fill_frac / Cells[i - 1].Fill_frac);
            if (slope_K <= 0) return low_K >= emptier_K ? Reserve_frac : Cells[i].Fill_frac;
            return Math.Max(Reserve_frac, Cells[i].Fill_frac * Math.Exp(-(low_K - fuller_K) / slope_K));
        }

        return Reserve_frac;
    }

    // Where the furnace is too small, not the gas, the gas has no limit that is known.
    private static double Limit_K(LimitCell cell) => cell.Kind switch
    {
        LimitKind.NotAtWarmest => double.PositiveInfinity,
        LimitKind.HoldsAtColdest => double.NegativeInfinity,
        _ => cell.FurnaceTooSmall ? double.NegativeInfinity : cell.Low_K,
    };
}
