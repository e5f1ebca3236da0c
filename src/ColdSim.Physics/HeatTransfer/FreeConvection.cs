using ColdSim.Physics.MoistAir;

namespace ColdSim.Physics.HeatTransfer;

/// <summary>The driving numbers of free convection in air.</summary>
/// <remarks>Properties at the film temperature, the mean of wall and air; air as an ideal gas, so its expansion is 1/T. No checks.</remarks>
public static class FreeConvection
{
    /// <summary>Standard acceleration of free fall, m/s².</summary>
    public const double Gravity_m_s2 = 9.80665;

    /// <summary>Rayleigh number g β |ΔT| L³/(ν α); the same for a warm and a cold wall.</summary>
    /// <param name="wall_K">Wall temperature, K.</param>
    /// <param name="air_K">Air temperature away from the wall, K.</param>
    /// <param name="length_m">Height, diameter or area over perimeter, as the correlation asks, m.</param>
    /// <param name="airPressure_Pa">Air pressure, Pa.</param>
    public static double Rayleigh(double wall_K, double air_K, double length_m, double airPressure_Pa)
    {
        double film_K = 0.5 * (wall_K + air_K);
        double rho = DryAir.Density_kg_m3(film_K, airPressure_Pa);
        return Gravity_m_s2 * Math.Abs(wall_K - air_K) * length_m * length_m * length_m * rho * rho * DryAir.SpecificHeat_J_kgK
            / (film_K * DryAir.DynamicViscosity_Pa_s(film_K) * DryAir.Conductivity_W_mK(film_K));
    }

    /// <summary>Reynolds number of a wind past a body at film temperature, for <see cref="CrossFlow"/>.</summary>
    /// <param name="wall_K">Wall temperature, K.</param>
    /// <param name="air_K">Air temperature, K.</param>
    /// <param name="wind_m_s">Wind at the body, m/s, 0 or more.</param>
    /// <param name="length_m">Diameter, m.</param>
    /// <param name="airPressure_Pa">Air pressure, Pa.</param>
    public static double Reynolds(double wall_K, double air_K, double wind_m_s, double length_m, double airPressure_Pa)
    {
        double film_K = 0.5 * (wall_K + air_K);
        return DryAir.Density_kg_m3(film_K, airPressure_Pa) * wind_m_s * length_m / DryAir.DynamicViscosity_Pa_s(film_K);
    }
}
