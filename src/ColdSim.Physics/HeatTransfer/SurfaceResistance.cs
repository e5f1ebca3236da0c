namespace ColdSim.Physics.HeatTransfer;

/// <summary>Resistance of the air films inside and outside a wall, m² K/W.</summary>
/// <remarks>Source: ISO 6946 (2007), conventional values and its annex on other conditions.</remarks>
internal static class SurfaceResistance
{
    /// <summary>Inside a wall, window or door, heat flowing sideways, m² K/W.</summary>
    public const double InsideHorizontal_m2K_W = 0.13;

    /// <summary>Outside film, m² K/W, by wind: 1/(4 + 4 v + ε 4 σ Tm³). No checks: called every step.</summary>
    /// <param name="wind_m_s">Wind next to the surface, m/s, 0 or more.</param>
    /// <param name="emissivity">Emissivity of the surface; painted and plastic ones 0.9.</param>
    /// <param name="mean_K">Mean temperature of the surface and what it sees, K.</param>
    public static double OutsideInWind_m2K_W(double wind_m_s, double emissivity, double mean_K)
        => 1 / (4 + (4 * wind_m_s) + (4 * emissivity * Radiation.StefanBoltzmann_W_m2K4 * mean_K * mean_K * mean_K));
}
