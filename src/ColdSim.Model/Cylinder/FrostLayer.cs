using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Cylinder;

/// <summary>Frost on the cold wall, per area of wall.</summary>
/// <param name="Mass_kg_m2">Frost. [kg/m²]</param>
/// <param name="Thickness_m">Depth. [m]</param>
public readonly record struct FrostLayer(double Mass_kg_m2, double Thickness_m)
{
    /// <summary>Resistance of the layer. [m²·K/W]</summary>
    public double Resistance_m2K_W
        => Thickness_m <= 0 ? 0 : Thickness_m / Frost.Conductivity_W_mK(Mass_kg_m2 / Thickness_m);

    /// <summary>The layer after a time of steady growth, or of loss.</summary>
    /// <param name="coupling">Flux and density of what is laid down.</param>
    /// <param name="time_s">How long. [s]</param>
    /// <remarks>What goes away goes at the layer's own density, so a layer that is gone has no thickness.</remarks>
    public FrostLayer After(in HeatCoupling coupling, double time_s)
    {
        double change_kg_m2 = coupling.FrostFlux_kg_m2s * time_s;
        double mass_kg_m2 = Mass_kg_m2 + change_kg_m2;
        if (mass_kg_m2 <= 0) return default;
        return change_kg_m2 > 0
            ? new FrostLayer(mass_kg_m2, Thickness_m + change_kg_m2 / coupling.FrostDensity_kg_m3)
            : new FrostLayer(mass_kg_m2, Thickness_m * mass_kg_m2 / Mass_kg_m2);
    }
}

/// <summary>Water that freezes to the wall, leaves it or melts off it, with its heat.</summary>
/// <param name="Flux_kg_m2s">Change of the frost layer. [kg/(m²·s)]</param>
/// <param name="Heat_W_m2">Heat that goes with it into the surface. [W/m²]</param>
/// <param name="Density_kg_m3">Density at which frost is laid down. [kg/m³]</param>
internal readonly record struct FrostExchange(double Flux_kg_m2s, double Heat_W_m2, double Density_kg_m3)
{
    /// <summary>The exchange at a surface.</summary>
    /// <remarks>
    /// Vapour follows heat by the Lewis relation. Below freezing it lies as frost or sublimes; above, it runs off as dew and what
    /// frost there is melts by the heat that would warm the surface further, and drips off.
    /// </remarks>
    public static FrostExchange At(
        in WeatherSample weather, double surface_K, double convection_W_m2K, double outside_W_m2K, in FrostLayer frost)
    {
        bool freezing = surface_K < ZeroCelsius_K;
        double saturated_Pa = freezing ? MagnusFormula.OverIce_Pa(surface_K) : MagnusFormula.OverWater_Pa(surface_K);
        double airDensity_kg_m3 = DryAir.Density_kg_m3(weather.Air_K, weather.Pressure_Pa);
        double flux_kg_m2s = Frost.MassTransferCoefficient_m_s(convection_W_m2K, airDensity_kg_m3)
            * (Humidity.VapourDensity_kg_m3(weather.VapourPressure_Pa, weather.Air_K)
                - Humidity.VapourDensity_kg_m3(saturated_Pa, surface_K));
        bool covered = frost.Mass_kg_m2 > 0;
        if (freezing)
        {
            if (flux_kg_m2s < 0 && !covered) return default;
            return new FrostExchange(flux_kg_m2s, flux_kg_m2s * Frost.LatentHeatOfSublimation_J_kg, Frost.Density_kg_m3(surface_K));
        }

        double dew_W_m2 = Math.Max(0, flux_kg_m2s) * Frost.LatentHeatOfVaporisation_J_kg;
        if (!covered) return new FrostExchange(0, dew_W_m2, 0);
        double melting_W_m2 = outside_W_m2K * (surface_K - ZeroCelsius_K);
        return new FrostExchange(-melting_W_m2 / Frost.LatentHeatOfFusion_J_kg, dew_W_m2 - melting_W_m2, 0);
    }
}
