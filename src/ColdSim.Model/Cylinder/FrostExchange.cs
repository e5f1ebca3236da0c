using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Cylinder;

/// <summary>Water that freezes to the wall, leaves it or melts off it, with its heat.</summary>
/// <param name="Flux_kg_m2s">Change of the frost layer. [kg/(m²·s)]</param>
/// <param name="Heat_W_m2">Heat that goes with it into the surface. [W/m²]</param>
/// <param name="Density_kg_m3">Density at which frost is laid down. [kg/m³]</param>
internal readonly record struct FrostExchange(double Flux_kg_m2s, double Heat_W_m2, double Density_kg_m3)
{
    private const double Melting_K = 273.15;

    /// <summary>The exchange at a surface.</summary>
    /// <remarks>
    /// Vapour follows heat by the Lewis relation. Below freezing it lies as frost or sublimes; above, it runs off as dew and what
    /// frost there is melts by the heat that would warm the surface further, and drips off.
    /// </remarks>
    public static FrostExchange At(
        in WeatherSample weather, double surface_K, double convection_W_m2K, double outside_W_m2K, in FrostLayer frost)
    {
        bool freezing = surface_K < Melting_K;
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
        double melting_W_m2 = outside_W_m2K * (surface_K - Melting_K);
        return new FrostExchange(-melting_W_m2 / Frost.LatentHeatOfFusion_J_kg, dew_W_m2 - melting_W_m2, 0);
    }
}
