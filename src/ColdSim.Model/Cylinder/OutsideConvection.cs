using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Cylinder;

/// <summary>Convection on a cylinder's outside: natural and forced, blended.</summary>
/// <remarks>
/// Upright: Churchill and Chu's vertical plate over the whole height, since the cold layer slides down the whole wall, wetted or
/// not. Horizontal: their horizontal cylinder. Wind: Churchill and Bernstein across the diameter. Blended after Churchill with
/// exponent 3 along upright walls and 4 round horizontal cylinders. Air properties are those between liquid and air temperature.
/// </remarks>
internal readonly struct OutsideConvection
{
    private const double UprightBlend = 3;
    private const double HorizontalBlend = 4;

    private readonly bool _upright;
    private readonly double _rayleigh;
    private readonly double _perLength_W_m2K;
    private readonly double _forced_W_m2K;
    private readonly double _fixed_W_m2K = double.NaN;

    /// <summary>The convection around a cylinder whose wall is at a temperature.</summary>
    public OutsideConvection(CylinderBody body, in WeatherSample weather, double wall_K)
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
        double wind_m_s = weather.Wind_m_s * around.WindShelter_frac;
        if (wind_m_s > 0)
            _forced_W_m2K = CrossFlow.NusseltAir(film.Reynolds(wind_m_s, diameter_m)) * film.Conductivity_W_mK / diameter_m;
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
        double natural = (_upright ? VerticalPlate.NusseltAir(rayleigh) : HorizontalCylinder.NusseltAir(rayleigh)) * _perLength_W_m2K;
        return _forced_W_m2K <= 0 ? natural : MixedConvection.Blend(_forced_W_m2K, natural, _upright ? UprightBlend : HorizontalBlend);
    }
}
