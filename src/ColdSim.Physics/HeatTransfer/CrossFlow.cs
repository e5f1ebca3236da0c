namespace ColdSim.Physics.HeatTransfer;

/// <summary>Wind across a cylinder: mean Nusselt number on its diameter.</summary>
/// <remarks>
/// Source: Churchill and Bernstein 1977, for Reynolds times Prandtl above 0.2; its authors call it a lower bound above 0.4.
/// Gusts, roughness and end effects raise it outdoors. No checks: called every step.
/// </remarks>
public static class CrossFlow
{
    private static readonly double AirFactor = PrandtlFactor(0.713);

    /// <summary>Mean Nusselt number for any fluid.</summary>
    /// <param name="reynolds">Reynolds number on the diameter, 0 or more.</param>
    /// <param name="prandtl">Prandtl number, above 0.</param>
    public static double Nusselt(double reynolds, double prandtl) => NusseltFromFactor(reynolds, PrandtlFactor(prandtl));

    /// <summary>Mean Nusselt number for air, with the Prandtl factor computed once for 0.713.</summary>
    /// <param name="reynolds">Reynolds number on the diameter, 0 or more.</param>
    public static double NusseltAir(double reynolds) => NusseltFromFactor(reynolds, AirFactor);

    // The part that depends on the Prandtl number alone, 0.62 Pr^(1/3)/[1 + (0.4/Pr)^(2/3)]^(1/4).
    private static double PrandtlFactor(double prandtl)
    {
        double cubeRoot = Math.Cbrt(0.4 / prandtl);
        return 0.62 * Math.Cbrt(prandtl) / Math.Sqrt(Math.Sqrt(1 + (cubeRoot * cubeRoot)));
    }

    private static double NusseltFromFactor(double reynolds, double prandtlFactor)
    {
        // (Re/282000)^(5/8) by square roots, which are cheaper than a power.
        double x = reynolds / 282_000;
        double fourth = Math.Sqrt(Math.Sqrt(x));
        double fiveEighths = Math.Sqrt(x) * Math.Sqrt(fourth);
        return 0.3 + (prandtlFactor * Math.Sqrt(reynolds) * Math.Pow(1 + fiveEighths, 0.8));
    }
}
