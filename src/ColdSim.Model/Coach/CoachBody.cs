using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Coach;

/// <summary>How the coach exchanges heat with outside, held over one time step. SI units.</summary>
/// <param name="Loss_W_K">To outside air: envelope and infiltration. [W/K]</param>
/// <param name="Ground_W_K">To the ground under a skirted floor. [W/K]</param>
/// <param name="Gains_W">Sun, people and things. [W]</param>
/// <param name="Air_m3_s">Air that comes in and goes out. [m³/s]</param>
public readonly record struct CoachCoupling(double Loss_W_K, double Ground_W_K, double Gains_W, double Air_m3_s);

/// <summary>The coach as two nodes, made once from its specification.</summary>
public sealed class CoachBody
{
    /// <summary>Adds up the conductances.</summary>
    /// <param name="specification">Specification of the coach.</param>
    /// <exception cref="ArgumentOutOfRangeException">An air node without heat capacity.</exception>
    public CoachBody(CoachSpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(specification.AirCapacity_J_K);
        Specification = specification;
        foreach (HeatLossItem item in specification.HeatLoss) Envelope_W_K += item.Conductance_W_K;
        HasFurnishings = specification is { FurnishingsCapacity_J_K: > 0, Coupling_W_K: > 0 };
    }

    /// <summary>Specification of the coach.</summary>
    public CoachSpecification Specification { get; }

    /// <summary>Sum of the breakdown, infiltration left out. [W/K]</summary>
    public double Envelope_W_K { get; }

    /// <summary>Whether the slow node exists.</summary>
    public bool HasFurnishings { get; }

    /// <summary>Air that leaks in and out, and what is let in on purpose. [m³/s]</summary>
    /// <param name="weather">The weather; its wind is that of the mast, the shelter is in the model's coefficient.</param>
    /// <param name="inside_K">Inside air. [K]</param>
    /// <remarks>ASHRAE's basic model, and ventilation on top of it.</remarks>
    public double AirExchange_m3_s(in WeatherSample weather, double inside_K)
        => Specification.Ventilation_m3_s + (Specification.LeakageArea_cm2 <= 0 ? 0 : Infiltration.Basic_m3_s(
            Specification.LeakageArea_cm2, inside_K - weather.Air_K, weather.Wind_m_s, Specification.Shelter));

    /// <summary>Heat that this air carries per kelvin: what comes in is air of outside's density. [W/K]</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="inside_K">Inside air. [K]</param>
    public double Infiltration_W_K(in WeatherSample weather, double inside_K) => Carried_W_K(weather, AirExchange_m3_s(weather, inside_K));

    /// <summary>The coupling at a weather and an inside temperature.</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="inside_K">Inside air. [K]</param>
    /// <param name="clock_s">Seconds after local midnight, for covers. [s]</param>
    public CoachCoupling At(in WeatherSample weather, double inside_K, double clock_s)
    {
        double exchange_m3_s = AirExchange_m3_s(weather, inside_K);
        return new(
            Envelope_W_K - (Covered(clock_s) ? Specification.Covers_W_K : 0) + Carried_W_K(weather, exchange_m3_s),
            Specification.GroundConductance_W_K,
            Specification.InternalGains_W + Specification.SolarAperture_m2 * weather.WindowSun_W_m2,
            exchange_m3_s);
    }

    private static double Carried_W_K(in WeatherSample weather, double exchange_m3_s)
        => exchange_m3_s <= 0 ? 0 : exchange_m3_s * DryAir.SpecificHeat_J_kgK
            * Humidity.MoistAirDensity_kg_m3(weather.Air_K, weather.Pressure_Pa, weather.VapourPressure_Pa);

    private bool Covered(double clock_s)
        => Specification.Covers_W_K > 0 && ClockWindow.AnyContains(Specification.CoverHours, clock_s);

    /// <summary>Energy stored in both nodes, from the state alone. [J]</summary>
    /// <param name="air_K">Inside air. [K]</param>
    /// <param name="furnishings_K">Furnishings. [K]</param>
    public double StoredEnergy_J(double air_K, double furnishings_K)
        => Specification.AirCapacity_J_K * air_K + (HasFurnishings ? Specification.FurnishingsCapacity_J_K * furnishings_K : 0);
}
