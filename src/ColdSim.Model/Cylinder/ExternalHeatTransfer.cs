using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Cylinder;

/// <summary>Convection, radiation and sun at the outer surface of a wall behind a layer of frost or insulation. SI units.</summary>
internal readonly struct ExternalHeatTransfer
{
    // A surface without a film still has a sol-air temperature: what the sun and frost give it then goes into the wall.
    private const double SmallestFilm_W_m2K = 1e-6;

    private readonly CylinderSurroundings _around;
    private readonly double _radiant_K, _air_K, _sun_W_m2;

    /// <summary>Heat transfer coefficients of a cylinder in a weather.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="convection">Convection on its wall, worked out once for all layers.</param>
    /// <param name="t_K">Temperature of liquid and shell. [K]</param>
    /// <param name="layer_m2K_W">Frost or insulation between the wall and the outer surface. [m²·K/W]</param>
    public ExternalHeatTransfer(CylinderBody body, in WeatherSample weather, in ExternalConvection convection, double t_K, double layer_m2K_W)
    {
        _around = body.Specification.Surroundings;
        _air_K = weather.Air_K;

        // The outer surface is close to the liquid's temperature; the little it differs by is found in one pass.
        _radiant_K = _around.FixedRadiation_W_m2K is null ? RadiantTemperature_K(_around, weather) : weather.Air_K;
        double first_W_m2K = convection.OfWall_W_m2K + RadiationAt_W_m2K(t_K);
        double behind_m2K_W = layer_m2K_W + 1 / _around.InsideFilm_W_m2K;
        double part_frac = 1 / (1 + behind_m2K_W * first_W_m2K);
        Surface_K = weather.Air_K + part_frac * (t_K - weather.Air_K);
        Convection_W_m2K = convection.At_W_m2K(part_frac);
        Radiation_W_m2K = RadiationAt_W_m2K(Surface_K);
        _sun_W_m2 = _around.FixedSun_W is double fixed_W
            ? fixed_W / body.Vessel.OutsideArea_m2
            : _around.SolarAbsorptance_frac * _around.SunExposure_frac * weather.CylinderSun_W_m2;
    }

    /// <summary>Temperature of the outer surface. [K]</summary>
    public double Surface_K { get; }

    /// <summary>Convection. [W/(m²·K)]</summary>
    public double Convection_W_m2K { get; }

    /// <summary>Radiation. [W/(m²·K)]</summary>
    public double Radiation_W_m2K { get; }

    /// <summary>Convection and radiation. [W/(m²·K)]</summary>
    public double Total_W_m2K => Math.Max(Convection_W_m2K + Radiation_W_m2K, SmallestFilm_W_m2K);

    /// <summary>The sol-air temperature of the surface. [K]</summary>
    /// <param name="latent_W_m2">Heat set free at the surface by frost. [W/m²]</param>
    public double Environment_K(double latent_W_m2)
        => (Convection_W_m2K * _air_K + Radiation_W_m2K * _radiant_K + _sun_W_m2 + latent_W_m2) / Total_W_m2K;

    private double RadiationAt_W_m2K(double surface_K)
        => _around.FixedRadiation_W_m2K ?? Radiation.LinearCoefficient_W_m2K(_around.Emissivity_frac, surface_K, _radiant_K);

    // A vertical wall in the open has a view factor of one half to the sky; the rest of its view counts at air temperature.
    private static double RadiantTemperature_K(CylinderSurroundings around, in WeatherSample weather)
    {
        double sky = 0.5 * around.SkyView_frac;
        if (sky <= 0) return weather.Air_K;
        double sky2 = weather.Sky_K * weather.Sky_K, air2 = weather.Air_K * weather.Air_K;
        return Math.Sqrt(Math.Sqrt(sky * sky2 * sky2 + (1 - sky) * air2 * air2));
    }
}

/// <summary>Convection on a cylinder's outside: natural and forced, blended.</summary>
/// <remarks>
/// Upright: Churchill and Chu's vertical plate over the whole height, since the cold layer slides down the whole wall, wetted or
/// not. Horizontal: their horizontal cylinder. Wind: Churchill and Bernstein across the diameter. Blended after Churchill with
/// exponent 3 along upright walls and 4 round horizontal cylinders. Air properties are those between liquid and air temperature.
/// </remarks>
internal readonly struct ExternalConvection
{
    private const double UprightBlend = 3;
    private const double HorizontalBlend = 4;

    private readonly bool _upright;
    private readonly double _rayleigh;
    private readonly double _perLength_W_m2K;
    private readonly double _forced_W_m2K;
    private readonly double _fixed_W_m2K = double.NaN;

    /// <summary>The convection around a cylinder whose wall is at a temperature.</summary>
    public ExternalConvection(CylinderBody body, in WeatherSample weather, double wall_K)
    {
        CylinderSurroundings around = body.Specification.Surroundings;
        if (around.FixedConvection_W_m2K is double fixed_W_m2K)
        {
            _fixed_W_m2K = OfWall_W_m2K = fixed_W_m2K;
            return;
        }

        AirFilm film = new(wall_K, weather.Air_K, weather.Pressure_Pa);
        double diameter_m = body.Specification.OutsideDiameter_m;
        _upright = body.Specification.Orientation == Orientation.Upright;
        double length_m = _upright ? body.Vessel.Height_m : diameter_m;
        _rayleigh = film.Rayleigh(wall_K - weather.Air_K, length_m);
        _perLength_W_m2K = film.Conductivity_W_mK / length_m;
        double wind_m_s = weather.Wind_m_s * around.WindExposure_frac;
        if (wind_m_s > 0)
            _forced_W_m2K = ForcedConvection.CrossFlowInAir(film.Reynolds(wind_m_s, diameter_m)) * film.Conductivity_W_mK / diameter_m;
        OfWall_W_m2K = At_W_m2K(1);
    }

    /// <summary>The coefficient where the outer surface is as warm as the wall. [W/(m²·K)]</summary>
    public double OfWall_W_m2K { get; }

    /// <summary>The coefficient where the outer surface differs from the air by only part of what the wall does. [W/(m²·K)]</summary>
    /// <param name="part_frac">Surface less air over wall less air.</param>
    public double At_W_m2K(double part_frac)
    {
        if (!double.IsNaN(_fixed_W_m2K)) return _fixed_W_m2K;
        double rayleigh = _rayleigh * part_frac;
        double natural = (_upright ? NaturalConvection.VerticalPlateInAir(rayleigh) : NaturalConvection.HorizontalCylinderInAir(rayleigh)) * _perLength_W_m2K;
        return _forced_W_m2K <= 0 ? natural : ForcedConvection.Blend(_forced_W_m2K, natural, _upright ? UprightBlend : HorizontalBlend);
    }
}
