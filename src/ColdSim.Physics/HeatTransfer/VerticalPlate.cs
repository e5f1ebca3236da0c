namespace ColdSim.Physics.HeatTransfer;

/// <summary>Free convection on an upright wall: mean Nusselt number on its height.</summary>
/// <remarks>
/// Source: Churchill and Chu 1975 (vertical plate), laminar and turbulent in one expression, for Rayleigh numbers up to 1e12.
/// A cold wall (falling layer) follows the same law. No checks: called every step.
/// </remarks>
public static class VerticalPlate
{
    // Air's Prandtl number stays within 0.70..0.73 outdoors, which moves the Nusselt number by less than 0.4 %.
    private static readonly double AirFactor = PrandtlFactor(0.713);

    /// <summary>Mean Nusselt number for any fluid.</summary>
    /// <param name="rayleigh">Rayleigh number on the height, 0 to 1e12.</param>
    /// <param name="prandtl">Prandtl number, above 0.</param>
    public static double Nusselt(double rayleigh, double prandtl) => NusseltFromFactor(rayleigh, PrandtlFactor(prandtl));

    /// <summary>Mean Nusselt number for air, with the Prandtl factor computed once for 0.713.</summary>
    /// <param name="rayleigh">Rayleigh number on the height, 0 to 1e12.</param>
    public static double NusseltAir(double rayleigh) => NusseltFromFactor(rayleigh, AirFactor);

    /// <summary>The part that depends on the Prandtl number alone, 0.387/[1 + (0.492/Pr)^(9/16)]^(8/27), to be kept by the caller.</summary>
    public static double PrandtlFactor(double prandtl) => 0.387 / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);

    /// <summary>Mean Nusselt number from a kept <see cref="PrandtlFactor"/>: (0.825 + factor Ra^(1/6))².</summary>
    public static double NusseltFromFactor(double rayleigh, double prandtlFactor)
    {
        double root = 0.825 + (prandtlFactor * Math.Sqrt(Math.Cbrt(rayleigh)));
        return root * root;
    }

    /// <summary>How much a slender upright cylinder exceeds the plate: Nu over Nu of the plate, 1 or more.</summary>
    /// <remarks>Source: Popiel, Wojtkowiak and Bober 2007, for Prandtl numbers 0.01 to 100; about 1.02 for a squat cylinder in air.</remarks>
    /// <param name="grashof">Grashof number on the height, above 0.</param>
    /// <param name="prandtl">Prandtl number.</param>
    /// <param name="height_m">Height, m.</param>
    /// <param name="diameter_m">Diameter, m.</param>
    public static double CylinderCorrection(double grashof, double prandtl, double height_m, double diameter_m)
    {
        double b = 0.0571322 + (0.20305 * Math.Pow(prandtl, -0.43));
        double c = 0.9165 - (0.0043 * Math.Sqrt(prandtl)) + (0.01333 * Math.Log(prandtl)) + (0.0004809 / prandtl);
        double curvature = Math.Sqrt(32) / Math.Sqrt(Math.Sqrt(grashof)) * height_m / diameter_m;
        return 1 + (b * Math.Pow(curvature, c));
    }
}
