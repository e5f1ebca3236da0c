namespace ColdSim.Physics.HeatTransfer;

/// <summary>Forced convection: mean Nusselt number of wind across a cylinder, and its blend with natural convection.</summary>
/// <remarks>
/// Source: Churchill and Bernstein 1977, for Reynolds times Prandtl above 0.2; its authors call it a lower bound above 0.4.
/// Gusts, roughness and end effects raise it outdoors. No checks: called every step.
/// </remarks>
internal static class ForcedConvection
{
    private static readonly double AirFactor = PrandtlFactor(0.713);

    /// <summary>Mean Nusselt number for any fluid.</summary>
    /// <param name="reynolds">Reynolds number on the diameter, 0 or more.</param>
    /// <param name="prandtl">Prandtl number, above 0.</param>
    public static double CrossFlow(double reynolds, double prandtl) => FromFactor(reynolds, PrandtlFactor(prandtl));

    /// <summary>Mean Nusselt number for air, with the Prandtl factor computed once for 0.713.</summary>
    /// <param name="reynolds">Reynolds number on the diameter, 0 or more.</param>
    public static double CrossFlowInAir(double reynolds) => FromFactor(reynolds, AirFactor);

    /// <summary>Mixed convection, (forced^n + natural^n)^(1/n), in whatever unit both come in.</summary>
    /// <remarks>
    /// Source: Churchill 1977, power blending; exponent 3 for vertical walls, 7/2 or 4 for plates and horizontal cylinders in a
    /// crossing wind (Incropera and DeWitt). The plus sign is right for a wind that crosses the rising or falling layer.
    /// </remarks>
    /// <param name="forced">Nusselt number or coefficient of the wind, 0 or more.</param>
    /// <param name="natural">The same of free convection, 0 or more.</param>
    /// <param name="exponent">Blending exponent, 1 or more.</param>
    public static double Blend(double forced, double natural, double exponent)
    {
        if (exponent == 3)
        {
            return Math.Cbrt((forced * forced * forced) + (natural * natural * natural));
        }

        if (exponent == 4)
        {
            double f2 = forced * forced;
            double n2 = natural * natural;
            return Math.Sqrt(Math.Sqrt((f2 * f2) + (n2 * n2)));
        }

        return Math.Pow(Math.Pow(forced, exponent) + Math.Pow(natural, exponent), 1 / exponent);
    }

    // The part that depends on the Prandtl number alone, 0.62 Pr^(1/3)/[1 + (0.4/Pr)^(2/3)]^(1/4).
    private static double PrandtlFactor(double prandtl)
    {
        double cubeRoot = Math.Cbrt(0.4 / prandtl);
        return 0.62 * Math.Cbrt(prandtl) / Math.Sqrt(Math.Sqrt(1 + (cubeRoot * cubeRoot)));
    }

    private static double FromFactor(double reynolds, double prandtlFactor)
    {
        // (Re/282000)^(5/8) by square roots, which are cheaper than a power.
        double x = reynolds / 282_000;
        double fourth = Math.Sqrt(Math.Sqrt(x));
        double fiveEighths = Math.Sqrt(x) * Math.Sqrt(fourth);
        return 0.3 + (prandtlFactor * Math.Sqrt(reynolds) * Math.Pow(1 + fiveEighths, 0.8));
    }
}
