namespace ColdSim.Physics.HeatTransfer;

/// <summary>Free convection round a lying cylinder: mean Nusselt number on its diameter.</summary>
/// <remarks>Source: Churchill and Chu 1975 (horizontal cylinder), for Rayleigh numbers up to 1e12. No checks: called every step.</remarks>
public static class HorizontalCylinder
{
    private static readonly double AirFactor = PrandtlFactor(0.713);

    /// <summary>Mean Nusselt number for any fluid.</summary>
    /// <param name="rayleigh">Rayleigh number on the diameter, 0 to 1e12.</param>
    /// <param name="prandtl">Prandtl number, above 0.</param>
    public static double Nusselt(double rayleigh, double prandtl) => NusseltFromFactor(rayleigh, PrandtlFactor(prandtl));

    /// <summary>Mean Nusselt number for air, with the Prandtl factor computed once for 0.713.</summary>
    /// <param name="rayleigh">Rayleigh number on the diameter, 0 to 1e12.</param>
    public static double NusseltAir(double rayleigh) => NusseltFromFactor(rayleigh, AirFactor);

    /// <summary>The part that depends on the Prandtl number alone, 0.387/[1 + (0.559/Pr)^(9/16)]^(8/27).</summary>
    public static double PrandtlFactor(double prandtl) => 0.387 / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);

    /// <summary>Mean Nusselt number from a kept <see cref="PrandtlFactor"/>: (0.60 + factor Ra^(1/6))².</summary>
    public static double NusseltFromFactor(double rayleigh, double prandtlFactor)
    {
        double root = 0.60 + (prandtlFactor * Math.Sqrt(Math.Cbrt(rayleigh)));
        return root * root;
    }
}
