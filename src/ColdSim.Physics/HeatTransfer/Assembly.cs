namespace ColdSim.Physics.HeatTransfer;

/// <summary>Thermal resistance of layered walls with bridges through them.</summary>
/// <remarks>
/// Source: ISO 6946 (2007), resistance of inhomogeneous components. Not meant for insulation bridged by metal, nor where
/// the two limits differ by more than half (<see cref="IsWithinMethod"/>); there the truth lies between the limits.
/// </remarks>
public static class Assembly
{
    /// <summary>Resistance of one even layer, m² K/W.</summary>
    /// <param name="thickness_m">Thickness, 0 to 2 m.</param>
    /// <param name="conductivity_W_mK">Conductivity, 0.001 to 1000 W/(m K).</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double LayerResistance_m2K_W(double thickness_m, double conductivity_W_mK)
        => Require.InRange(thickness_m, 0, 2, "m") / Require.InRange(conductivity_W_mK, 0.001, 1_000, "W/(m K)");

    /// <summary>Resistance of layers one behind the other, films included where given, m² K/W.</summary>
    /// <param name="resistances_m2K_W">Resistance of each layer, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A resistance below 0 or not a number.</exception>
    public static double Series_m2K_W(params ReadOnlySpan<double> resistances_m2K_W)
    {
        double sum = 0;
        foreach (double resistance_m2K_W in resistances_m2K_W)
        {
            sum += Require.InRange(resistance_m2K_W, 0, 1_000, "m² K/W");
        }

        return sum;
    }

    /// <summary>Resistance of paths side by side, m² K/W: 1/R = Σ f/R.</summary>
    /// <remarks>Of whole paths it is ISO 6946's upper limit; layer by layer, added up, the lower limit.</remarks>
    /// <param name="fractions">Share of the area of each path; together 1.</param>
    /// <param name="resistances_m2K_W">Resistance of each path, above 0.</param>
    /// <exception cref="ArgumentException">Unequal counts, or shares that do not make 1.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside 0..1 or a resistance not above 0.</exception>
    public static double Parallel_m2K_W(ReadOnlySpan<double> fractions, ReadOnlySpan<double> resistances_m2K_W)
    {
        if (fractions.Length != resistances_m2K_W.Length)
        {
            throw new ArgumentException($"{fractions.Length} shares of area for {resistances_m2K_W.Length} resistances.", nameof(fractions));
        }

        double area = 0;
        double transmittance = 0;
        for (int i = 0; i < fractions.Length; i++)
        {
            double fraction = Require.InRange(fractions[i], 0, 1, "(fraction)");
            area += fraction;
            transmittance += fraction / Require.InRange(resistances_m2K_W[i], 1e-9, 1_000, "m² K/W");
        }

        return Math.Abs(area - 1) <= 1e-9
            ? 1 / transmittance
            : throw new ArgumentException(FormattableString.Invariant($"The shares of area add up to {area}, not 1."), nameof(fractions));
    }

    /// <summary>ISO 6946's resistance of a bridged component: the mean of its limits, m² K/W.</summary>
    /// <param name="upper_m2K_W">Upper limit, heat flowing straight through.</param>
    /// <param name="lower_m2K_W">Lower limit, each plane at one temperature; at most the upper limit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit not above 0, or the lower above the upper.</exception>
    public static double Combined_m2K_W(double upper_m2K_W, double lower_m2K_W)
    {
        Require.InRange(upper_m2K_W, 1e-9, 1_000, "m² K/W");

        // A trace above the upper limit is rounding in a component without bridges, where both are equal.
        Require.InRange(lower_m2K_W, 1e-9, upper_m2K_W * (1 + 1e-9), "m² K/W");
        return 0.5 * (upper_m2K_W + lower_m2K_W);
    }

    /// <summary>Whether ISO 6946's method may be used: the limits differ by a factor of at most 1.5.</summary>
    public static bool IsWithinMethod(double upper_m2K_W, double lower_m2K_W) => upper_m2K_W <= 1.5 * lower_m2K_W;
}
