using ColdSim.Physics.MoistAir;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.HeatTransfer;

/// <summary>Frost on a cold wall: how fast vapour arrives, how much of it goes into the layer, how the layer conducts.</summary>
/// <remarks>
/// Published conductivities differ by a factor of two and densities by one of two to three, so a frost layer's resistance is known no better than that.
/// No checks: called every step.
/// </remarks>
internal static class Frost
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

    /// <summary>Density at which frost is laid down, kg/m³, before vapour from outside fills it.</summary>
    /// <remarks>Source: Korn 2014, the density from which frost on a cooler of air starts to grow.</remarks>
    public const double LaidDensity_kg_m3 = 50;

    /// <summary>Density beyond which old frost is not seen to go without melting, kg/m³; by hand from what measured fits reach.</summary>
    public const double LargestDensity_kg_m3 = 500;

    private const double SettledDensity_kg_m3 = 1e-7;
    private const double Ice_kg_m3 = 917;
    private const double StillAir_W_mK = 0.024;

    /// <summary>Conductivity, W/(m K), of frost of <paramref name="density_kg_m3"/> (50 to 700 kg/m³), with the heat that vapour carries through it.</summary>
    /// <remarks>
    /// Source: Östin and Andersson 1991. The lowest of the fits to frost, so it does not hide the insulation: others are up to twice that, and a
    /// fit to snow three quarters. Below some 65 kg/m³ it would fall below still air's conductivity, which is then kept.
    /// </remarks>
    public static double Conductivity_W_mK(double density_kg_m3)
        => Math.Max(StillAir_W_mK, -8.71e-3 + (density_kg_m3 * (4.39e-4 + (1.05e-6 * density_kg_m3))));

    /// <summary>Diffusivity of water vapour in still air, m²/s.</summary>
    /// <remarks>Source: Massman 1998, 0 to 100 °C; colder it is an extrapolation of its power law.</remarks>
    /// <param name="t_K">Temperature, K.</param>
    /// <param name="pressure_Pa">Air pressure, Pa.</param>
    public static double VapourDiffusivity_m2_s(double t_K, double pressure_Pa)
        => 2.178e-5 * Math.Pow(t_K / ZeroCelsius_K, 1.81) * (StandardAtmosphere.SeaLevel_Pa / pressure_Pa);

    /// <summary>Part of the diffusivity in still air that is left in the pores of frost: (3 ε − 1)/2 at the porosity ε.</summary>
    /// <remarks>Source: Calonne and others 2014, the self-consistent estimate, within 10 % in snow. Crystals that take and give vapour fast leave more, 80 to 100 %.</remarks>
    public static double InPores_frac(double density_kg_m3) => Math.Max(0, 1 - (1.5 / Ice_kg_m3 * density_kg_m3));

    /// <summary>Vapour that diffuses from the surface into the layer and makes it denser, kg/(m² s): Fick's law along the temperature in the frost.</summary>
    /// <param name="drive">Heat through the surface times diffusivity in air times slope of the saturated vapour's density there.</param>
    /// <param name="density_kg_m3">Density of the layer, kg/m³.</param>
    public static double Inward_kg_m2s(double drive, double density_kg_m3)
        => drive * InPores_frac(density_kg_m3) / Conductivity_W_mK(density_kg_m3);

    /// <summary>Density, kg/m³, that a layer grows with: of what arrives a part goes inward, and the rest is laid down at <see cref="LaidDensity_kg_m3"/>.</summary>
    /// <param name="arriving_kg_m2s">Vapour that arrives, kg/(m² s), above 0.</param>
    /// <param name="drive">As in <see cref="Inward_kg_m2s"/>.</param>
    /// <param name="least_kg_m3">What is returned where it would grow lighter, kg/m³.</param>
    public static double GrowingDensity_kg_m3(double arriving_kg_m2s, double drive, double least_kg_m3 = LaidDensity_kg_m3)
    {
        double least = Math.Max(LaidDensity_kg_m3, least_kg_m3), density = LargestDensity_kg_m3;
        if (least >= density || OnTop(least, arriving_kg_m2s, drive, out _) >= 0) return least;
        double onTop = OnTop(density, arriving_kg_m2s, drive, out double slope);
        if (onTop <= 0) return density;

        // It bends upward all the way, so that Newton's steps come down to the root from above.
        double step = onTop / slope;
        while (step > SettledDensity_kg_m3)
        {
            density -= step;
            step = OnTop(density, arriving_kg_m2s, drive, out slope) / slope;
        }

        return density - step;
    }

    // What is left for the top beyond what is laid there, times density and conductivity, so that it has no division; and its slope by the density.
    private static double OnTop(double density_kg_m3, double arriving_kg_m2s, double drive, out double slope)
    {
        double conductivity = Conductivity_W_mK(density_kg_m3), byDensity = conductivity > StillAir_W_mK ? 4.39e-4 + (2 * 1.05e-6 * density_kg_m3) : 0;
        double pores = InPores_frac(density_kg_m3), perDensity = pores > 0 ? -1.5 / Ice_kg_m3 : 0;
        double left = (arriving_kg_m2s * conductivity) - (drive * pores);
        slope = left + (density_kg_m3 * ((arriving_kg_m2s * byDensity) - (drive * perDensity))) - (LaidDensity_kg_m3 * arriving_kg_m2s * byDensity);
        return (density_kg_m3 * left) - (LaidDensity_kg_m3 * arriving_kg_m2s * conductivity);
    }

    /// <summary>Mass-transfer coefficient, m/s, that times the difference of vapour densities gives the flux, kg/(m² s).</summary>
    /// <remarks>Lewis relation: heat and vapour cross the same boundary layer. Source: Incropera and DeWitt.</remarks>
    /// <param name="h_W_m2K">Convective part of the outside coefficient, W/(m² K), without radiation.</param>
    /// <param name="airDensity_kg_m3">Density of the air, kg/m³.</param>
    public static double MassTransferCoefficient_m_s(double h_W_m2K, double airDensity_kg_m3)
        => h_W_m2K / (airDensity_kg_m3 * DryAir.SpecificHeat_J_kgK * LewisPower);
}
