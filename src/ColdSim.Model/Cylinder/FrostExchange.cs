using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Cylinder;

/// <summary>Water that freezes to the wall, leaves it or melts off it, with its heat, at the surface temperature that closes the surface's balance.</summary>
/// <param name="Flux_kg_m2s">Change of the frost layer. [kg/(m²·s)]</param>
/// <param name="Inward_kg_m2s">What goes from the surface into the layer and makes it denser. [kg/(m²·s)]</param>
/// <param name="Heat_W_m2">Heat that goes with it into the surface. [W/m²]</param>
/// <param name="Surface_K">Temperature of the surface. [K]</param>
internal readonly record struct FrostExchange(double Flux_kg_m2s, double Inward_kg_m2s, double Heat_W_m2, double Surface_K)
{
    // Halley's steps from the surface without latent heat; after one that is shorter than this the balance is closed to less than a nanokelvin.
    private const int MostTurns = 12;
    private const double LastStep_K = 1e-3;

    /// <summary>The exchange at the surface of a wall or of the frost on it.</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="film">Convection, radiation and sun at the surface.</param>
    /// <param name="liquid_K">Liquid and shell. [K]</param>
    /// <param name="behind_W_m2K">From the surface through frost and inside film to the liquid. [W/(m²·K)]</param>
    /// <param name="frost">Frost on the wall.</param>
    /// <remarks>
    /// Vapour follows heat by the Lewis relation. Below freezing it lies as frost or sublimes; above, it runs off as dew, and frost holds its surface
    /// at freezing, melts by what the balance leaves over there, and drips off.
    /// </remarks>
    public static FrostExchange At(in WeatherSample weather, in ExternalHeatTransfer film, double liquid_K, double behind_W_m2K, in FrostLayer frost)
    {
        double outside_W_m2K = film.Total_W_m2K, environment_K = film.Environment_K(0), all_W_m2K = outside_W_m2K + behind_W_m2K;
        double dry_K = (outside_W_m2K * environment_K + behind_W_m2K * liquid_K) / all_W_m2K;
        double transfer_m_s = Frost.MassTransferCoefficient_m_s(film.Convection_W_m2K, DryAir.Density_kg_m3(weather.Air_K, weather.Pressure_Pa));
        double air_kg_m3 = Humidity.VapourDensity_kg_m3(weather.VapourPressure_Pa, weather.Air_K);
        bool covered = frost.Mass_kg_m2 > 0;
        if (!covered && air_kg_m3 <= Saturated_kg_m3(dry_K, dry_K < ZeroCelsius_K)) return new FrostExchange(0, 0, 0, dry_K);
        double surface_K = BalancedSurface_K(dry_K, all_W_m2K, transfer_m_s, air_kg_m3, ice: true, out double saturated_kg_m3);
        if (surface_K < ZeroCelsius_K)
        {
            double flux_kg_m2s = transfer_m_s * (air_kg_m3 - saturated_kg_m3);
            double inward_kg_m2s = GoesInward_kg_m2s(weather, flux_kg_m2s, behind_W_m2K * (surface_K - liquid_K), surface_K, saturated_kg_m3, frost);
            return new FrostExchange(flux_kg_m2s, inward_kg_m2s, flux_kg_m2s * Frost.LatentHeatOfSublimation_J_kg, surface_K);
        }

        if (!covered)
        {
            surface_K = Math.Max(ZeroCelsius_K, BalancedSurface_K(dry_K, all_W_m2K, transfer_m_s, air_kg_m3, ice: false, out _));
            return new FrostExchange(0, 0, all_W_m2K * (surface_K - dry_K), surface_K);
        }

        // Vapour arrives as dew, of which a part freezes where the surface needs its heat to be at freezing.
        double dew_W_m2 = transfer_m_s * Math.Max(0, air_kg_m3 - Saturated_kg_m3(ZeroCelsius_K, ice: false)) * Frost.LatentHeatOfVaporisation_J_kg;
        double over_W_m2 = all_W_m2K * (dry_K - ZeroCelsius_K) + dew_W_m2;
        double melting_W_m2 = liquid_K < ZeroCelsius_K
            ? over_W_m2
            : MeltingOnWarmWall_W_m2(over_W_m2, outside_W_m2K * (environment_K - ZeroCelsius_K) + dew_W_m2, outside_W_m2K * (dry_K - ZeroCelsius_K));
        double onTop_kg_m2s = -melting_W_m2 / Frost.LatentHeatOfFusion_J_kg, into_W_m2 = behind_W_m2K * (ZeroCelsius_K - liquid_K);
        double soaks_kg_m2s = GoesInward_kg_m2s(weather, onTop_kg_m2s, into_W_m2, ZeroCelsius_K, Saturated_kg_m3(ZeroCelsius_K, ice: true), frost);
        return new FrostExchange(onTop_kg_m2s, soaks_kg_m2s, dew_W_m2 - melting_W_m2, ZeroCelsius_K);
    }

    // A wall that is warmer than freezing melts frost from behind, faster than a step would notice: then only what comes from outside counts, or what
    // would warm the surface.
    private static double MeltingOnWarmWall_W_m2(double over_W_m2, double fromOutside_W_m2, double warming_W_m2)
        => Math.Max(0, Math.Max(Math.Min(over_W_m2, fromOutside_W_m2), warming_W_m2));

    // Heat by film and wall and latent heat add up to nothing. With the vapour's curvature too, two evaluations do.
    private static double BalancedSurface_K(double dry_K, double all_W_m2K, double transfer_m_s, double air_kg_m3, bool ice, out double saturated_kg_m3)
    {
        double latent_J_kg = ice ? Frost.LatentHeatOfSublimation_J_kg : Frost.LatentHeatOfVaporisation_J_kg, surface_K = dry_K;
        double latent_Wm_kg = latent_J_kg * transfer_m_s;
        saturated_kg_m3 = Saturated_kg_m3(surface_K, ice);
        if (!ice && air_kg_m3 <= saturated_kg_m3) return surface_K;
        for (int i = 0; i < MostTurns; i++)
        {
            double perKelvin = 1 / surface_K, magnus_1_K = ice ? MagnusFormula.OverIceSlope_1_K(surface_K) : MagnusFormula.OverWaterSlope_1_K(surface_K);
            double slope_1_K = magnus_1_K - perKelvin;
            double curvature_1_K2 = slope_1_K * slope_1_K + perKelvin * perKelvin
                - 2 * magnus_1_K / (ice ? MagnusFormula.OverIceOffset_K(surface_K) : MagnusFormula.OverWaterOffset_K(surface_K));
            double fall_W_m2K = all_W_m2K + latent_Wm_kg * saturated_kg_m3 * slope_1_K;
            double newton_K = (all_W_m2K * (dry_K - surface_K) + latent_Wm_kg * (air_kg_m3 - saturated_kg_m3)) / fall_W_m2K;
            double step_K = newton_K / (1 + 0.5 * newton_K * latent_Wm_kg * saturated_kg_m3 * curvature_1_K2 / fall_W_m2K);
            surface_K += step_K;
            if (Math.Abs(step_K) < LastStep_K)
            {
                saturated_kg_m3 *= 1 + step_K * (slope_1_K + 0.5 * step_K * curvature_1_K2);
                break;
            }

            saturated_kg_m3 = Saturated_kg_m3(surface_K, ice);
        }

        return surface_K;
    }

    // A layer that is lighter than it would grow here takes no more inward than if it were not: young frost comes to that within minutes.
    private static double GoesInward_kg_m2s(
        in WeatherSample weather, double flux_kg_m2s, double heat_W_m2, double surface_K, double saturated_kg_m3, in FrostLayer frost)
    {
        if (heat_W_m2 <= 0) return 0;
        double slope_kg_m3K = saturated_kg_m3 * (MagnusFormula.OverIceSlope_1_K(surface_K) - 1 / surface_K);
        double drive = heat_W_m2 * Frost.VapourDiffusivity_m2_s(surface_K, weather.Pressure_Pa) * slope_kg_m3K;
        double density_kg_m3 = flux_kg_m2s > 0 ? Frost.GrowingDensity_kg_m3(flux_kg_m2s, drive, frost.Density_kg_m3) : frost.Density_kg_m3;
        return density_kg_m3 < Frost.LargestDensity_kg_m3 ? Frost.Inward_kg_m2s(drive, density_kg_m3) : 0;
    }

    private static double Saturated_kg_m3(double t_K, bool ice)
        => Humidity.VapourDensity_kg_m3(ice ? MagnusFormula.OverIce_Pa(t_K) : MagnusFormula.OverWater_Pa(t_K), t_K);
}
