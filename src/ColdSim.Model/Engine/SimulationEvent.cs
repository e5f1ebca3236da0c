namespace ColdSim.Model.Engine;

/// <summary>Kinds of event at an instant of a run.</summary>
internal enum EventKind
{
    /// <summary>The thermostat calls for heat. Value: inside air. [K]</summary>
    HeatCalled,

    /// <summary>The thermostat is satisfied. Value: inside air. [K]</summary>
    HeatSatisfied,

    /// <summary>The burner lights. Value: delivery pressure. [Pa gauge]</summary>
    BurnerOn,

    /// <summary>The burner goes out at the end of a call. Value: inside air. [K]</summary>
    BurnerOff,

    /// <summary>A try at ignition fails because pressure is too low. Value: delivery pressure. [Pa gauge]</summary>
    IgnitionFailed,

    /// <summary>The flame is lost because pressure is too low. Value: delivery pressure. [Pa gauge]</summary>
    FlameLost,

    /// <summary>The furnace locks out. Value: inside air. [K]</summary>
    Lockout,

    /// <summary>The furnace tries again by itself after lockout. Value: inside air. [K]</summary>
    LockoutRetry,

    /// <summary>The furnace is reset by hand. Value: inside air. [K]</summary>
    LockoutReset,

    /// <summary>The gas demand is no longer met. Value: cylinder pressure. [Pa gauge]</summary>
    ShortBegins,

    /// <summary>The gas demand is met again, or has ended. Value: cylinder pressure. [Pa gauge]</summary>
    ShortEnds,

    /// <summary>The last liquid has boiled off. Value: vapour left. [kg]</summary>
    LiquidGone,

    /// <summary>Vapour left in a dry cylinder has cooled to liquid again. Value: vapour. [kg]</summary>
    LiquidAgain,

    /// <summary>Inside air falls through the freezing point of water. Value: outside air. [K]</summary>
    InsideFreezing,

    /// <summary>Inside air rises through the freezing point of water. Value: outside air. [K]</summary>
    InsideThawed,

    /// <summary>The liquid fills the cylinder; the run ends there. Value: liquid temperature. [K]</summary>
    LiquidFull,

    /// <summary>The relief valve would open; the run ends there. Value: liquid temperature. [K]</summary>
    ReliefPressure,

    /// <summary>The weather file ends before the run. Value: 0.</summary>
    WeatherEnds,

    /// <summary>Another cylinder was opened by hand. Value: propane left in the one that was shut. [kg]</summary>
    CylinderChanged,

    /// <summary>A changeover's reserve side begins to feed. Value: propane left on the service side. [kg]</summary>
    ReserveFeeds,

    /// <summary>The service side of a changeover feeds alone again. Value: propane left on the service side. [kg]</summary>
    ServiceAlone,

    /// <summary>A blanket switches on. Value: the dry wall under it, as its thermostat feels it. [K]</summary>
    BlanketOn,

    /// <summary>A blanket switches off. Value: the dry wall under it, as its thermostat feels it. [K]</summary>
    BlanketOff,

    /// <summary>A cylinder warms past 125 °F, the limit for compressed-gas cylinders. Value: its hottest place, the top of the dry wall. [K]</summary>
    CylinderHot,

    /// <summary>The cylinder has cooled below that again. Value: its hottest place. [K]</summary>
    CylinderCooled,

    /// <summary>The water of a node begins to freeze. Value: outside air. [K]</summary>
    WaterFreezes,

    /// <summary>The water of a node is ice through and through. Value: outside air. [K]</summary>
    WaterSolid,

    /// <summary>The last ice of a node has thawed. Value: outside air. [K]</summary>
    WaterThawed,

    /// <summary>Condensation begins on the coldest surface. Value: temperature of that surface. [K]</summary>
    DampSettles,

    /// <summary>Condensation on the coldest surface has ended. Value: temperature of that surface. [K]</summary>
    DampGone,

    /// <summary>The battery is flat and voltage is gone. Value: charge per rated.</summary>
    VoltageGone,

    /// <summary>Voltage is back. Value: charge per rated.</summary>
    VoltageBack,

    /// <summary>The generator starts. Value: charge per rated.</summary>
    GeneratorStarts,

    /// <summary>The generator stops, with the battery charged or at the end of its hours. Value: charge per rated.</summary>
    GeneratorStops,

    /// <summary>The generator stops because gas pressure is too low. Value: delivery pressure. [Pa gauge]</summary>
    GeneratorStarved,

    /// <summary>Somebody asleep wakes because inside is too cold. Value: inside air. [K]</summary>
    WokenByCold,

    /// <summary>Somebody has reset the furnace in vain often enough and stops trying. Value: inside air. [K]</summary>
    ResetsGivenUp,

    /// <summary>Acid in the battery freezes. Value: charge per rated.</summary>
    BatteryFreezes,

    /// <summary>The battery has thawed. Value: charge per rated.</summary>
    BatteryThawed,

    /// <summary>The battery is too cold to give anything. Value: charge per rated.</summary>
    BatteryCutOut,
}

/// <summary>An event of a run.</summary>
/// <param name="Time_s">Seconds since the run's start.</param>
/// <param name="Kind">Kind of event.</param>
/// <param name="Value">The number that goes with the kind.</param>
/// <param name="Cylinder">Index of the cylinder or node it happens to; 0 for an event of neither.</param>
internal readonly record struct SimulationEvent(double Time_s, EventKind Kind, double Value, int Cylinder = 0);
