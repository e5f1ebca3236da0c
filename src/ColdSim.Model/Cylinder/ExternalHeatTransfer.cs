using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Cylinder;

/// <summary>Convection, radiation and sun at the outer surface of a wall behind a layer of frost or insulation. SI units.</summary>
internal readonly struct ExternalHeatTransfer
{
    private readonly CylinderSurroundings _around;
    private readonly double _radiation_W_m2K, _radiant_K, _air_K, _sun_W_m2;

    /// <summary>The film of a cylinder in a weather.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="convection">The convection around it; the same for every layer on its wall.</param>
    /// <param name="t_K">Temperature of liquid and shell. [K]</param>
    /// <param name="layer_m2K_W">Frost or insulation between the wall and the outer surface. [m²·K/W]</param>
    public ExternalHeatTransfer(CylinderBody body, in WeatherSample weather, in OutsideConvection convection, double t_K, double layer_m2K_W)
    {
        _around = body.Specification.Surroundings;
        _air_K = weather.Air_K;

        // The outer surface is close to the liquid's temperature; the little it differs by is found in one pass.
        _radiant_K = _around.FixedRadiation_W_m2K is null ? RadiantTemperature_K(_around, weather) : weather.Air_K;
        double first_W_m2K = convection.OfWall_W_m2K + Radiation_W_m2K(t_K);
        double behind_m2K_W = layer_m2K_W + 1 / _around.InsideFilm_W_m2K;
        double part_frac = 1 / (1 + behind_m2K_W * first_W_m2K);
        Surface_K = weather.Air_K + part_frac * (t_K - weather.Air_K);
        Convection_W_m2K = convection.At_W_m2K(part_frac);
        _radiation_W_m2K = Radiation_W_m2K(Surface_K);
        _sun_W_m2 = _around.FixedSun_W is null
            ? _around.SolarAbsorptance_frac * _around.SunExposure_frac * weather.CylinderSun_W_m2
            : 0;
    }

    /// <summary>Temperature of the outer surface. [K]</summary>
    public double Surface_K { get; }

    /// <summary>Convection. [W/(m²·K)]</summary>
    public double Convection_W_m2K { get; }

    /// <summary>Convection and radiation. [W/(m²·K)]</summary>
    public double Total_W_m2K => Convection_W_m2K + _radiation_W_m2K;

    /// <summary>The sol-air temperature of the surface. [K]</summary>
    /// <param name="latent_W_m2">Heat set free at the surface by frost. [W/m²]</param>
    public double Environment_K(double latent_W_m2)
        => (Convection_W_m2K * _air_K + _radiation_W_m2K * _radiant_K + _sun_W_m2 + latent_W_m2) / Total_W_m2K;

    private double Radiation_W_m2K(double surface_K)
        => _around.FixedRadiation_W_m2K ?? Radiation.LinearCoefficient_W_m2K(_around.Emissivity_frac, surface_K, _radiant_K);

    // An upright wall in the open sees sky with half of its view; ground and things around are taken at air temperature.
    private static double RadiantTemperature_K(CylinderSurroundings around, in WeatherSample weather)
    {
        double sky = 0.5 * around.SkyView_frac;
        if (sky <= 0) return weather.Air_K;
        double sky2 = weather.Sky_K * weather.Sky_K, air2 = weather.Air_K * weather.Air_K;
        return Math.Sqrt(Math.Sqrt(sky * sky2 * sky2 + (1 - sky) * air2 * air2));
    }
}
