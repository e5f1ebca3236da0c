namespace ColdSim.Model.Electrical;

/// <summary>The open-circuit voltage of a flooded lead-acid battery of six cells that has rested for hours, by its charge.</summary>
/// <remarks>
/// The table of the Battery Council International for acid at 80 °F: 12.65 V full, 12.45 at three quarters, 12.24 at half, 12.06 at a quarter,
/// 11.89 discharged; straight lines between. It does not hold for gel and AGM batteries nor for lithium, nor while something is drawn or charged.
/// Docs: sources.md.
/// </remarks>
internal static class LeadAcidRestVoltage
{
    /// <summary>Its standard error: what the table differs from the rule "specific gravity + 0.84 V a cell", as a root mean square. [V]</summary>
    public const double Error_V = 0.08;

    private static readonly double[] ByQuarter_V = [11.89, 12.06, 12.24, 12.45, 12.65];

    /// <summary>The voltage at rest. [V]</summary>
    /// <param name="charge_frac">Charge per rated, 0 to 1; held at the ends beyond.</param>
    public static double AtCharge_V(double charge_frac)
    {
        double quarters = 4 * Math.Clamp(charge_frac, 0, 1);
        int i = Math.Min(3, (int)quarters);
        return ByQuarter_V[i] + (quarters - i) * (ByQuarter_V[i + 1] - ByQuarter_V[i]);
    }
}
