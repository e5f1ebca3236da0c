using ColdSim.Physics.MoistAir;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.HeatTransfer;

/// <summary>Frost on a cold wall: how dense it grows, how it conducts, how fast vapour arrives.</summary>
/// <remarks>
/// The published conductivities differ by a factor of two, so a frost layer's resistance is known no better than that.
/// No checks: called every step.
/// </remarks>
public static class Frost
{
    /// <summary>Heat released when vapour turns to ice, J/kg, near -10 °C.</summary>
    public const double LatentHeatOfSublimation_J_kg = 2.835e6;

    /// <summary>Heat released when vapour turns to water, J/kg, at 0 °C.</summary>
    public const double LatentHeatOfVaporisation_J_kg = 2.501e6;

    /// <summary>Heat released when water turns to ice, J/kg, at 0 °C.</summary>
    public const double LatentHeatOfFusion_J_kg = 3.34e5;

    /// <summary>Lewis number of water vapour in air, thermal over mass diffusivity.</summary>
    public const double Lewis = 0.87;

    // 0.87^(2/3)
    private const double LewisPower = 0.911_338;

    /// <summary>Density, kg/m³, of frost whose surface is at <paramref name="surface_K"/>: 650 exp(0.277 t_C), kept within 80..500.</summary>
    /// <remarks>
    /// Source: Hayashi and others 1977, measured with surfaces from about -8 to 0 °C. Colder, the exponential falls to
    /// densities lighter than any frost seen (5 kg/m³ at -18 °C); near 0 °C it passes what old frost reaches. Hence the limits.
    /// </remarks>
    public static double Density_kg_m3(double surface_K)
        => Math.Clamp(650 * Math.Exp(0.277 * (surface_K - ZeroCelsius_K)), 80, 500);

    /// <summary>Conductivity, W/(m K), of frost of <paramref name="density_kg_m3"/> (50 to 700 kg/m³).</summary>
    /// <remarks>Source: Östin and Andersson 1991. The lowest of the published fits for light frost, so it does not hide the insulation.</remarks>
    public static double Conductivity_W_mK(double density_kg_m3)
        => -8.71e-3 + (density_kg_m3 * (4.39e-4 + (1.05e-6 * density_kg_m3)));

    /// <summary>Mass-transfer coefficient, m/s, that times the difference of vapour densities gives the flux, kg/(m² s).</summary>
    /// <remarks>Lewis relation: heat and vapour cross the same boundary layer. Source: Incropera and DeWitt.</remarks>
    /// <param name="h_W_m2K">Convective part of the outside coefficient, W/(m² K), without radiation.</param>
    /// <param name="airDensity_kg_m3">Density of the air, kg/m³.</param>
    public static double MassTransferCoefficient_m_s(double h_W_m2K, double airDensity_kg_m3)
        => h_W_m2K / (airDensity_kg_m3 * DryAir.SpecificHeat_J_kgK * LewisPower);
}
