namespace ColdSim.Physics.MoistAir;

/// <summary>Properties of dry air near one atmosphere, for 180..500 K; no checks.</summary>
/// <remarks>
/// Source: viscosity (Sutherland) and conductivity as in the US Standard Atmosphere 1976, ideal-gas density.
/// Humidity changes none of them by more than 0.5 % in winter air, so it enters only the density of moist air.
/// </remarks>
internal static class DryAir
{
    /// <summary>Gas constant of dry air, J/(kg K): 8.314462618/0.0289652.</summary>
    public const double GasConstant_J_kgK = 287.05;

    /// <summary>Specific heat at constant pressure, J/(kg K); varies by 0.2 % from -50 to 40 °C.</summary>
    public const double SpecificHeat_J_kgK = 1006;

    /// <summary>Density, kg/m³, at temperature <paramref name="t_K"/> and pressure <paramref name="p_Pa"/>.</summary>
    public static double Density_kg_m3(double t_K, double p_Pa) => p_Pa / (GasConstant_J_kgK * t_K);

    /// <summary>Dynamic viscosity, Pa s, at <paramref name="t_K"/>.</summary>
    public static double DynamicViscosity_Pa_s(double t_K) => 1.458e-6 * t_K * Math.Sqrt(t_K) / (t_K + 110.4);

    /// <summary>Thermal conductivity, W/(m K), at <paramref name="t_K"/>.</summary>
    // The standard writes 245.4 * 10^(-12/T); 12 ln 10 = 27.6310211.
    public static double Conductivity_W_mK(double t_K)
        => 2.64638e-3 * t_K * Math.Sqrt(t_K) / (t_K + (245.4 * Math.Exp(-27.6310211 / t_K)));
}
