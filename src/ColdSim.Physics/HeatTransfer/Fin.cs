namespace ColdSim.Physics.HeatTransfer;

/// <summary>The dry wall of a tank as a fin that leads heat down to the liquid line.</summary>
/// <remarks>
/// Straight fin of even thickness, its tip insulated, one face in the air and the other in vapour that takes no heat.
/// Closed-form solution of the fin equation; found in every heat-transfer textbook (Incropera and DeWitt). No checks.
/// </remarks>
internal static class Fin
{
    /// <summary>Length, m, of wall at the root's temperature that takes as much heat as the fin: tanh(mL)/m, m = √(h/(k t)).</summary>
    /// <param name="h_W_m2K">Outside coefficient, W/(m² K), 0 or more.</param>
    /// <param name="conductivity_W_mK">Conductivity of the wall, W/(m K).</param>
    /// <param name="thickness_m">Wall thickness, m.</param>
    /// <param name="length_m">Length of the fin from root to tip, m.</param>
    public static double EffectiveLength_m(double h_W_m2K, double conductivity_W_mK, double thickness_m, double length_m)
    {
        double m = Math.Sqrt(h_W_m2K / (conductivity_W_mK * thickness_m));

        // tanh(x)/x is 1 within 1e-12 here, and 0/0 is kept away.
        return m * length_m < 1e-6 ? length_m : Math.Tanh(m * length_m) / m;
    }

    /// <summary>Length, m, of wetted wall that takes into the liquid as much heat as the fin does, where the root itself is wall behind a film.</summary>
    /// <remarks>
    /// Below the liquid line the wall goes on as a long fin between the liquid and outside, so the root is warmer than the liquid, and of what the fin leads
    /// into it a part goes back outside. With w = h_liquid/(h_liquid + h), l = tanh(mL)/m: w l/(1 + √(1 − w) m l). A perfect film leaves l.
    /// </remarks>
    /// <param name="h_W_m2K">Outside coefficient, W/(m² K), 0 or more.</param>
    /// <param name="liquid_W_m2K">Film between the wetted wall and the liquid, W/(m² K), above 0.</param>
    /// <param name="conductivity_W_mK">Conductivity of the wall, W/(m K).</param>
    /// <param name="thickness_m">Wall thickness, m.</param>
    /// <param name="length_m">Length of the fin from root to tip, m.</param>
    public static double EffectiveLength_m(double h_W_m2K, double liquid_W_m2K, double conductivity_W_mK, double thickness_m, double length_m)
    {
        double l_m = EffectiveLength_m(h_W_m2K, conductivity_W_mK, thickness_m, length_m), wetted = liquid_W_m2K / (liquid_W_m2K + h_W_m2K);
        return wetted * l_m / (1 + Math.Sqrt((1 - wetted) * h_W_m2K / (conductivity_W_mK * thickness_m)) * l_m);
    }
}
