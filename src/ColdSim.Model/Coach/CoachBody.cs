using System.Runtime.CompilerServices;
using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;
using ColdSim.Physics.MoistAir;

namespace ColdSim.Model.Coach;

/// <summary>How the coach exchanges heat with outside in one weather. SI units.</summary>
/// <param name="Envelope_W_K">Through walls, windows, roof and floor to outside air. [W/K]</param>
/// <param name="Ground_W_K">To the ground under a skirted floor. [W/K]</param>
/// <param name="Gains_W">Sun, people and things. [W]</param>
/// <param name="Ventilation_m3_s">Air that is let in on purpose. [m³/s]</param>
/// <param name="Leakage">Air that leaks in, by the difference of temperature.</param>
/// <param name="Air_J_m3K">Heat capacity of outside's air by volume. [J/(m³·K)]</param>
internal readonly record struct CoachCoupling(
    double Envelope_W_K, double Ground_W_K, double Gains_W, double Ventilation_m3_s, InfiltrationInWind Leakage, double Air_J_m3K)
{
    /// <summary>Air that comes in and goes out. [m³/s]</summary>
    /// <param name="dT_K">Inside less outside. [K]</param>
    public double Air_m3_s(double dT_K) => Ventilation_m3_s + Leakage.At_m3_s(dT_K);

    /// <summary>Loss to outside air per kelvin: envelope, ventilation and infiltration. [W/K]</summary>
    /// <param name="dT_K">Inside less outside. [K]</param>
    public double Loss_W_K(double dT_K) => Envelope_W_K + Air_J_m3K * Air_m3_s(dT_K);

    /// <summary>The coupling some time later.</summary>
    /// <param name="drift">How fast sun and wind change it.</param>
    /// <param name="time_s">How much later; negative for earlier. [s]</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public CoachCoupling After(in CoachDrift drift, double time_s) => this with
    {
        Gains_W = Gains_W + time_s * drift.Gains_W_s,
        Leakage = Leakage with { Wind_m3_s = Leakage.Wind_m3_s + time_s * drift.WindLeakage_m3_s2 },
    };
}

/// <summary>How fast sun and wind change what the coach meets. SI units.</summary>
/// <param name="Gains_W_s">Sun through the windows. [W/s]</param>
/// <param name="WindLeakage_m3_s2">Air that the wind alone would let leak in. [m³/s²]</param>
internal readonly record struct CoachDrift(double Gains_W_s, double WindLeakage_m3_s2);

/// <summary>The coach as two nodes, made once from its specification.</summary>
/// <remarks>
/// What would follow within two seconds is not told apart, for no visible difference and steps of a sensible length: furnishings that follow
/// the air so fast are air, and air counts with at least the capacity with which it follows in two seconds.
/// </remarks>
internal sealed class CoachBody
{
    private const double ShortestTimeConstant_s = 2;

    /// <summary>Adds up the conductances.</summary>
    /// <param name="specification">Specification of the coach.</param>
    /// <exception cref="ArgumentOutOfRangeException">An air node without heat capacity.</exception>
    public CoachBody(CoachSpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(specification.AirCapacity_J_K);
        Specification = specification;
        foreach (HeatLossItem item in specification.HeatLoss) Envelope_W_K += item.Conductance_W_K;
        bool coupled = specification is { FurnishingsCapacity_J_K: > 0, Coupling_W_K: > 0 };
        HasFurnishings = coupled && specification.FurnishingsCapacity_J_K >= ShortestTimeConstant_s * specification.Coupling_W_K;
        double joined_J_K = coupled && !HasFurnishings ? specification.FurnishingsCapacity_J_K : 0;
        double conductance_W_K = (HasFurnishings ? specification.Coupling_W_K : 0) + Envelope_W_K + specification.GroundConductance_W_K;
        AirCapacity_J_K = Math.Max(specification.AirCapacity_J_K + joined_J_K, ShortestTimeConstant_s * conductance_W_K);
    }

    /// <summary>Specification of the coach.</summary>
    public CoachSpecification Specification { get; }

    /// <summary>Sum of the breakdown, infiltration left out. [W/K]</summary>
    public double Envelope_W_K { get; }

    /// <summary>Heat capacity of the fast node. [J/K]</summary>
    public double AirCapacity_J_K { get; }

    /// <summary>Whether the slow node exists.</summary>
    public bool HasFurnishings { get; }

    /// <summary>Heat that infiltration and ventilation carry per kelvin: what comes in is air of outside's density. [W/K]</summary>
    /// <param name="weather">The weather; its wind is that of the mast, the shelter is in the model's coefficient.</param>
    /// <param name="inside_K">Inside air. [K]</param>
    public double Infiltration_W_K(in WeatherSample weather, double inside_K)
    {
        CoachCoupling coupling = At(weather, 0);
        return coupling.Air_J_m3K * coupling.Air_m3_s(inside_K - weather.Air_K);
    }

    /// <summary>The coupling in a weather.</summary>
    /// <param name="weather">The weather; its wind is that of the mast, the shelter is in the model's coefficient.</param>
    /// <param name="clock_s">Seconds after local midnight, for covers. [s]</param>
    /// <remarks>ASHRAE's basic model, and ventilation on top of it.</remarks>
    public CoachCoupling At(in WeatherSample weather, double clock_s) => new(
        Envelope_W_K - (Covered(clock_s) ? Specification.Covers_W_K : 0),
        Specification.GroundConductance_W_K,
        Specification.InternalGains_W + Specification.SolarAperture_m2 * weather.WindowSun_W_m2,
        Specification.Ventilation_m3_s,
        Specification.LeakageArea_cm2 <= 0 ? default : Infiltration.InWind(Specification.LeakageArea_cm2, weather.Wind_m_s, Specification.Shelter),
        DryAir.SpecificHeat_J_kgK * Humidity.MoistAirDensity_kg_m3(weather.Air_K, weather.Pressure_Pa, weather.VapourPressure_Pa));

    /// <summary>How fast the coupling changes between two instants of weather that is linear in time.</summary>
    /// <param name="from">Weather at the first.</param>
    /// <param name="to">Weather at the second.</param>
    /// <param name="between_s">Time between them, above 0. [s]</param>
    public CoachDrift DriftBetween(in WeatherSample from, in WeatherSample to, double between_s) => new(
        Specification.SolarAperture_m2 * (to.WindowSun_W_m2 - from.WindowSun_W_m2) / between_s,
        Specification.LeakageArea_cm2 <= 0 ? 0
            : Infiltration.InWind(Specification.LeakageArea_cm2, 1, Specification.Shelter).Wind_m3_s * (to.Wind_m_s - from.Wind_m_s) / between_s);

    private bool Covered(double clock_s)
        => Specification.Covers_W_K > 0 && ClockWindow.AnyContains(Specification.CoverHours, clock_s);

    /// <summary>Energy stored in both nodes, from the state alone. [J]</summary>
    /// <param name="air_K">Inside air. [K]</param>
    /// <param name="furnishings_K">Furnishings. [K]</param>
    public double StoredEnergy_J(double air_K, double furnishings_K)
        => AirCapacity_J_K * air_K + (HasFurnishings ? Specification.FurnishingsCapacity_J_K * furnishings_K : 0);
}
