using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.Freezing;

/// <summary>Water and ice near 0 °C. SI units.</summary>
/// <remarks>Handbook values, from memory: docs/sources.md, "water and ice".</remarks>
internal static class Water
{
    /// <summary>Freezing point. [K]</summary>
    public const double Freezing_K = ZeroCelsius_K;

    /// <summary>Specific heat of liquid water, 0 to 60 °C within half a percent. [J/(kg·K)]</summary>
    public const double SpecificHeat_J_kgK = 4190;

    /// <summary>Specific heat of ice. [J/(kg·K)]</summary>
    public const double IceSpecificHeat_J_kgK = 2090;

    /// <summary>Latent heat of fusion. [J/kg]</summary>
    public const double LatentHeat_J_kg = 334e3;

    /// <summary>Density of water. [kg/m³]</summary>
    public const double Density_kg_m3 = 1000;

    /// <summary>Conductivity of ice. [W/(m·K)]</summary>
    public const double IceConductivity_W_mK = 2.22;
}
