using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Cylinder;

/// <summary>What the air in an enclosure needs to know of a cylinder in it. SI units.</summary>
/// <param name="Body">The cylinder.</param>
/// <param name="Liquid_m3">Volume of its liquid. [m³]</param>
/// <param name="Temperature_K">Liquid and shell. [K]</param>
/// <param name="Frost">Frost on its wall.</param>
/// <param name="Blanket_W">Heat that its blanket makes. [W]</param>
/// <param name="WholeShell_frac">How far its whole shell counts: 0 with liquid, 1 once its vapour is clearly unsaturated.</param>
internal readonly record struct EnclosedCylinder(
    CylinderBody Body, double Liquid_m3, double Temperature_K, FrostLayer Frost, double Blanket_W, double WholeShell_frac = 0);

/// <summary>The air in a cover or locker, which the cylinders in it chill. SI units.</summary>
/// <remarks>
/// One node, without a state: its air and skin settle within a minute or a few, a cylinder within hours. Heat through the walls, with the air of the openings
/// and from the coach's wall equals what the cylinders take; docs/model.md, "Enclosure", has every equation and source.
/// </remarks>
internal sealed class EnclosureBody
{
    // ISO 6946: an inside surface resistance of 0.13 m²·K/W, and outside 4 + 4 v by convection.
    private const double InsideFilm_W_m2K = 1 / 0.13;
    private const double StillAir_W_m2K = 4, PerWind_J_m3K = 4;
    private const double Emissivity = 0.9;
    private const double AirHeat_J_kgK = 1006;

    // Flow that goes with a root of the difference makes each pass halve the error at least.
    private const int MostPasses = 60;
    private const double Settled_K = 1e-5;

    // Without a difference there is no flow, so that from air as cold as outside a blanket's heat would first go through the walls alone.
    private const double LargestMove_K = 100;

    private readonly EnclosureSpecification _enclosure;

    /// <summary>An enclosure.</summary>
    /// <param name="enclosure">What it is.</param>
    public EnclosureBody(EnclosureSpecification enclosure)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        _enclosure = enclosure;
    }

    /// <summary>The weather as the cylinders in it have it: its air, no sky and no sun.</summary>
    /// <param name="weather">The weather outside.</param>
    /// <param name="air_K">Its air. [K]</param>
    public static WeatherSample Within(in WeatherSample weather, double air_K) => weather with
    {
        Air_K = air_K,
        Sky_K = air_K,
        CylinderSun_W_m2 = 0,
        VapourPressure_Pa = Math.Min(
            weather.VapourPressure_Pa, SaturationVapour.PressureOverWater_Pa(Math.Clamp(air_K, SaturationVapour.Min_K, SaturationVapour.Max_K))),
    };

    /// <summary>Its air. [K]</summary>
    /// <param name="weather">The weather outside.</param>
    /// <param name="cylinders">The cylinders in it.</param>
    /// <param name="coach_K">Inside air of the coach; NaN without one. [K]</param>
    /// <param name="near_K">Where to look first: what it was a moment ago, or the outside air. [K]</param>
    public double Air_K(in WeatherSample weather, ReadOnlySpan<EnclosedCylinder> cylinders, double coach_K, double near_K)
    {
        double wind_m_s = weather.Wind_m_s * _enclosure.WindExposure_frac;
        double wall_W_K = Walls(weather, wind_m_s, out double wall_K);
        double coach_W_K = double.IsNaN(coach_K) ? 0 : _enclosure.Coach_W_K;
        double wind_m3_s = Openings.Wind_m3_s(_enclosure.LowOpening_m2 + _enclosure.HighOpening_m2, wind_m_s);
        double perFlow_J_m3K = DryAir.Density_kg_m3(weather.Air_K, weather.Pressure_Pa) * AirHeat_J_kgK;
        double air_K = near_K;
        for (int pass = 0; pass < MostPasses; pass++)
        {
            double stack_m3_s = Openings.Stack_m3_s(_enclosure.LowOpening_m2, _enclosure.HighOpening_m2, _enclosure.OpeningHeight_m, air_K, weather.Air_K);
            double openings_W_K = perFlow_J_m3K * Openings.Both_m3_s(stack_m3_s, wind_m3_s);
            double sum_W_K = wall_W_K + openings_W_K + coach_W_K;
            double sum_W = wall_W_K * wall_K + openings_W_K * weather.Air_K + (coach_W_K > 0 ? coach_W_K * coach_K : 0);
            WeatherSample within = Within(weather, air_K);
            foreach (ref readonly EnclosedCylinder cylinder in cylinders)
            {
                HeatCoupling coupling = HeatCoupling.At(
                    cylinder.Body, within, cylinder.Liquid_m3, cylinder.WholeShell_frac, cylinder.Temperature_K, cylinder.Frost);

                // Under a blanket the dry wall is taken as steady, and what gas carries off of its heat as nothing.
                double conductance_W_K = coupling.Conductance_W_K + coupling.Wall.Outside_W_K * coupling.Wall.ToLiquid_frac(0);
                sum_W_K += conductance_W_K;
                sum_W += conductance_W_K * cylinder.Temperature_K + (1 - coupling.BlanketShare_frac(0)) * cylinder.Blanket_W;
            }

            double before_K = air_K;
            air_K = sum_W_K > 0 ? Math.Clamp(sum_W / sum_W_K, before_K - LargestMove_K, before_K + LargestMove_K) : weather.Air_K;
            if (Math.Abs(air_K - before_K) < Settled_K) break;
        }

        return air_K;
    }

    // Conductance of the walls with their films, and the sol-air temperature outside of them.
    private double Walls(in WeatherSample weather, double wind_m_s, out double outside_K)
    {
        double radiation_W_m2K = Radiation.LinearCoefficient_W_m2K(Emissivity, weather.Air_K, weather.Air_K), convection_W_m2K = StillAir_W_m2K + PerWind_J_m3K * wind_m_s;
        double film_W_m2K = radiation_W_m2K + convection_W_m2K, sky = 0.5 * _enclosure.SkyView_frac;
        double sun_W_m2 = _enclosure.SolarAbsorptance_frac * _enclosure.SunExposure_frac * weather.CylinderSun_W_m2;
        outside_K = weather.Air_K + (sun_W_m2 - sky * radiation_W_m2K * (weather.Air_K - weather.Sky_K)) / film_W_m2K;
        return _enclosure.FixedLoss_W_K ?? _enclosure.Area_m2 / (1 / InsideFilm_W_m2K + _enclosure.Wall_m2K_W + 1 / film_W_m2K);
    }
}
