using ColdSim.Model.Moisture;
using ColdSim.Physics.Flow;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Coach;

/// <summary>One line of the heat-loss breakdown.</summary>
/// <param name="Name">Such as "walls" or "windows, double".</param>
/// <param name="Conductance_W_K">Area times U, or bridge times length. [W/K]</param>
public sealed record HeatLossItem(string Name, double Conductance_W_K);

/// <summary>A coach as two nodes, air and furnishings, behind a sum of conductances. SI units.</summary>
public sealed record CoachSpecification
{
    /// <summary>Conductances from inside air to outside air, infiltration left out. [W/K each]</summary>
    public required IReadOnlyList<HeatLossItem> HeatLoss { get; init; }

    /// <summary>Effective leakage area at 4 Pa; 0 where a measured heat loss already holds it. [cm²]</summary>
    public double LeakageArea_cm2 { get; init; }

    /// <summary>Shelter of the site from wind, for infiltration.</summary>
    public ShelterClass Shelter { get; init; } = ShelterClass.Isolated;

    /// <summary>Heat capacity that follows the air: air and light furnishings. [J/K]</summary>
    public required double AirCapacity_J_K { get; init; }

    /// <summary>Heat capacity of the slow node; 0 leaves one node. [J/K]</summary>
    public required double FurnishingsCapacity_J_K { get; init; }

    /// <summary>Between the nodes. [W/K]</summary>
    public required double Coupling_W_K { get; init; }

    /// <summary>From inside to the ground under a skirted floor. [W/K]</summary>
    public double GroundConductance_W_K { get; init; }

    /// <summary>Ground under a skirted floor. [K]</summary>
    public double GroundTemperature_K { get; init; } = ZeroCelsius_K;

    /// <summary>Window area times solar heat gain coefficient, all windows together. [m²]</summary>
    public double SolarAperture_m2 { get; init; }

    /// <summary>People and things that run always. [W]</summary>
    public double InternalGains_W { get; init; }

    /// <summary>Fresh air let in on purpose: a roof vent or window ajar. [m³/s]</summary>
    public double Ventilation_m3_s { get; init; }

    /// <summary>What covers over windows take from the conductances while they are up. [W/K]</summary>
    public double Covers_W_K { get; init; }

    /// <summary>Hours in which the covers are up; empty for always.</summary>
    public IReadOnlyList<ClockWindow> CoverHours { get; init; } = [];

    /// <summary>Damp in its air, or null where it is not followed.</summary>
    public MoistureSpecification? Moisture { get; init; }

    /// <summary>Inside at the start; null takes the set point, or the outside air where there is no thermostat. [K]</summary>
    public double? InitialTemperature_K { get; init; }
}
