using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Cylinder;

/// <summary>Heat from the surroundings into a cylinder: convection, radiation, sun, frost, and the dry wall as a fin.</summary>
/// <remarks>See docs/model.md, "Outside of the cylinder", for every equation and source.</remarks>
public static class CylinderFilm
{
    // A thickness given by the scenario is taken as settled frost.
    private const double FixedFrostDensity_kg_m3 = 150;

    /// <summary>The coupling between liquid and surroundings at a state.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="mass_kg">Propane. [kg]</param>
    /// <param name="t_K">Temperature of liquid and shell. [K]</param>
    /// <param name="frost">Frost on the wall.</param>
    public static HeatCoupling At(CylinderBody body, in WeatherSample weather, double mass_kg, double t_K, in FrostLayer frost)
    {
        CylinderSurroundings around = body.Specification.Surroundings;
        if (around.FixedConductance_W_K is double measured_W_K)
            return new HeatCoupling(measured_W_K, weather.Air_K);

        // The outer surface is close to the liquid's temperature; the little it differs by is found in one pass.
        OutsideConvection convection = new(body, weather, t_K);
        double radiant_K = around.FixedRadiation_W_m2K is null ? RadiantTemperature_K(around, weather) : weather.Air_K;
        double first_W_m2K = convection.At_W_m2K(1) + Radiation_W_m2K(around, t_K, radiant_K);
        double layer_m2K_W = around.FixedFrost_m is double fixed_m ? FixedFrost_m2K_W(fixed_m) : frost.Resistance_m2K_W;
        double behind_m2K_W = layer_m2K_W + 1 / around.InsideFilm_W_m2K;
        double part_frac = 1 / (1 + behind_m2K_W * first_W_m2K);
        double surface_K = weather.Air_K + part_frac * (t_K - weather.Air_K);
        double convection_W_m2K = convection.At_W_m2K(part_frac);
        double radiation_W_m2K = Radiation_W_m2K(around, surface_K, radiant_K);
        double outside_W_m2K = convection_W_m2K + radiation_W_m2K;

        FrostExchange exchange = around.FixedFrost_m is null
            ? FrostExchange.At(weather, surface_K, convection_W_m2K, outside_W_m2K, frost)
            : default;
        double sun_W_m2 = around.FixedSun_W is null
            ? around.SolarAbsorptance_frac * around.SunExposure_frac * weather.CylinderSun_W_m2
            : 0;
        double environment_K = (convection_W_m2K * weather.Air_K + radiation_W_m2K * radiant_K + sun_W_m2 + exchange.Heat_W_m2)
            / outside_W_m2K;

        double conductance_W_K = Conductance_W_K(body, mass_kg, t_K, outside_W_m2K, layer_m2K_W);
        if (around.FixedSun_W is double sun_W && conductance_W_K > 0)
            environment_K += sun_W / conductance_W_K;
        return new HeatCoupling(conductance_W_K, environment_K, exchange.Flux_kg_m2s, exchange.Density_kg_m3);
    }

    // Wetted wall behind inside film and frost, and the dry wall above it as a fin behind frost. Without liquid the whole shell
    // is one temperature with the vapour and all of it counts.
    private static double Conductance_W_K(CylinderBody body, double mass_kg, double t_K, double outside_W_m2K, double layer_m2K_W)
    {
        double dry_W_m2K = 1 / (1 / outside_W_m2K + layer_m2K_W);
        CylinderContents contents = body.Contents(mass_kg, t_K);
        if (!contents.HasLiquid) return body.Vessel.OutsideArea_m2 * dry_W_m2K;

        double wet_W_m2K = 1 / (1 / dry_W_m2K + 1 / body.Specification.Surroundings.InsideFilm_W_m2K);
        double level_m = body.Vessel.LiquidLevel_m(Math.Min(contents.LiquidVolume_m3, body.Vessel.Volume_m3));
        double dry_m = body.Vessel.DryFinLength_m(level_m);
        double fin_m = body.Specification.Surroundings.FixedFin_m is double fixed_m
            ? Math.Min(fixed_m, dry_m)
            : Fin.EffectiveLength_m(dry_W_m2K, body.Specification.WallConductivity_W_mK, body.Specification.WallThickness_m, dry_m);
        return wet_W_m2K * (body.Vessel.WettedArea_m2(level_m) + fin_m * body.Vessel.FinRootLength_m(level_m));
    }

    private static double Radiation_W_m2K(CylinderSurroundings around, double surface_K, double radiant_K)
        => around.FixedRadiation_W_m2K ?? Radiation.LinearCoefficient_W_m2K(around.Emissivity_frac, surface_K, radiant_K);

    // An upright wall in the open sees sky with half of its view; ground and things around are taken at air temperature.
    private static double RadiantTemperature_K(CylinderSurroundings around, in WeatherSample weather)
    {
        double sky = 0.5 * around.SkyView_frac;
        if (sky <= 0) return weather.Air_K;
        double sky2 = weather.Sky_K * weather.Sky_K, air2 = weather.Air_K * weather.Air_K;
        return Math.Sqrt(Math.Sqrt(sky * sky2 * sky2 + (1 - sky) * air2 * air2));
    }

    private static double FixedFrost_m2K_W(double thickness_m)
        => thickness_m / Frost.Conductivity_W_mK(FixedFrostDensity_kg_m3);
}
