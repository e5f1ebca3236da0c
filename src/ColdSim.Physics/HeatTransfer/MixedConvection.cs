namespace ColdSim.Physics.HeatTransfer;

/// <summary>Joins wind and free convection into one coefficient.</summary>
/// <remarks>
/// Source: Churchill 1977, power blending; exponent 3 for upright walls, 7/2 or 4 for plates and lying cylinders in a
/// crossing wind (Incropera and DeWitt). The plus sign is right for a wind that crosses the rising or falling layer. No checks.
/// </remarks>
public static class MixedConvection
{
    /// <summary>(forced^n + natural^n)^(1/n), in whatever unit both come in.</summary>
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
}
