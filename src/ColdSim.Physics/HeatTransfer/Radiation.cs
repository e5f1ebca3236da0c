namespace ColdSim.Physics.HeatTransfer;

/// <summary>Heat radiation between a small grey surface and large surroundings.</summary>
/// <remarks>Stefan-Boltzmann law; the constant is the exact SI value of 2019 (CODATA 2018). No checks.</remarks>
internal static class Radiation
{
    /// <summary>Stefan-Boltzmann constant, W/(m² K⁴).</summary>
    public const double StefanBoltzmann_W_m2K4 = 5.670374419e-8;

    /// <summary>Coefficient, W/(m² K), that times (surroundings - surface) gives exactly ε σ (Tr⁴ - Ts⁴).</summary>
    /// <param name="emissivity">Emissivity of the surface, 0 to 1.</param>
    /// <param name="surface_K">Surface temperature, K.</param>
    /// <param name="surroundings_K">Temperature of what it sees, K.</param>
    public static double LinearCoefficient_W_m2K(double emissivity, double surface_K, double surroundings_K)
        => emissivity * StefanBoltzmann_W_m2K4 * ((surface_K * surface_K) + (surroundings_K * surroundings_K)) * (surface_K + surroundings_K);
}
