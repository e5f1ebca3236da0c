using ColdSim.Physics.MoistAir;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.HeatTransfer;

/// <summary>The film of air on a wall: its properties at the mean of wall and air temperature, worked out once for all that need them.</summary>
/// <remarks>Ideal gas density; Sutherland viscosity and conductivity as in the U.S. Standard Atmosphere 1976. No checks: called every step.</remarks>
internal readonly struct AirFilm
{
    private readonly double _buoyancy_1_m3K;
    private readonly double _inverseKinematicViscosity_s_m2;

    /// <summary>The film between a wall and air.</summary>
    /// <param name="wall_K">Wall temperature. [K]</param>
    /// <param name="air_K">Air temperature. [K]</param>
    /// <param name="airPressure_Pa">Air pressure. [Pa]</param>
    public AirFilm(double wall_K, double air_K, double airPressure_Pa)
    {
        double film_K = 0.5 * (wall_K + air_K);
        double density_kg_m3 = DryAir.Density_kg_m3(film_K, airPressure_Pa);
        double viscosity_Pa_s = DryAir.DynamicViscosity_Pa_s(film_K);
        Conductivity_W_mK = DryAir.Conductivity_W_mK(film_K);
        _inverseKinematicViscosity_s_m2 = density_kg_m3 / viscosity_Pa_s;
        _buoyancy_1_m3K = StandardGravity_m_s2 * density_kg_m3 * DryAir.SpecificHeat_J_kgK * _inverseKinematicViscosity_s_m2
            / (film_K * Conductivity_W_mK);
    }

    /// <summary>Thermal conductivity. [W/(m·K)]</summary>
    public double Conductivity_W_mK { get; }

    /// <summary>Rayleigh number g ΔT L³ / (T ν a).</summary>
    /// <param name="difference_K">Wall less air temperature; its sign does not matter. [K]</param>
    /// <param name="length_m">Characteristic length. [m]</param>
    public double Rayleigh(double difference_K, double length_m)
        => _buoyancy_1_m3K * Math.Abs(difference_K) * length_m * length_m * length_m;

    /// <summary>Reynolds number v L / ν.</summary>
    /// <param name="wind_m_s">Wind along or across the wall. [m/s]</param>
    /// <param name="length_m">Characteristic length. [m]</param>
    public double Reynolds(double wind_m_s, double length_m) => wind_m_s * length_m * _inverseKinematicViscosity_s_m2;
}
