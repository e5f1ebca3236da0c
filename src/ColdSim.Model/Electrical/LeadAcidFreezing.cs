using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Electrical;

/// <summary>When the acid of a lead-acid battery freezes: the less charge, the more water is in it and the warmer.</summary>
/// <remarks>
/// Specific gravity by charge: a battery maker's support page, middle of its ranges. Freezing point by specific gravity: TM 5-1185, table III. Straight
/// lines between. Docs: sources.md.
/// </remarks>
internal static class LeadAcidFreezing
{
    private static readonly double[] GravityByQuarter = [1.120, 1.160, 1.190, 1.225, 1.265];
    private static readonly double[] Gravity = [1.100, 1.150, 1.200, 1.250, 1.280];
    private static readonly double[] FreezesFahrenheit = [19, 5, -16, -62, -90];

    /// <summary>Specific gravity of the acid at a charge.</summary>
    /// <param name="charge_frac">Charge per rated, 0 to 1.</param>
    public static double SpecificGravity(double charge_frac)
    {
        double quarters = 4 * Math.Clamp(charge_frac, 0, 1);
        int i = Math.Min(3, (int)quarters);
        return GravityByQuarter[i] + (quarters - i) * (GravityByQuarter[i + 1] - GravityByQuarter[i]);
    }

    /// <summary>Freezing point of acid of a specific gravity. [K]</summary>
    /// <param name="gravity">Specific gravity, 1.1 to 1.28; held at the ends beyond.</param>
    public static double FreezingPoint_K(double gravity)
    {
        int i = 0;
        while (i < Gravity.Length - 2 && gravity > Gravity[i + 1]) i++;
        double x = Math.Clamp((gravity - Gravity[i]) / (Gravity[i + 1] - Gravity[i]), 0, 1);
        return (FreezesFahrenheit[i] + x * (FreezesFahrenheit[i + 1] - FreezesFahrenheit[i]) - 32) / 1.8 + ZeroCelsius_K;
    }

    /// <summary>Freezing point of the acid at a charge. [K]</summary>
    /// <param name="charge_frac">Charge per rated, 0 to 1.</param>
    public static double AtCharge_K(double charge_frac) => FreezingPoint_K(SpecificGravity(charge_frac));
}
