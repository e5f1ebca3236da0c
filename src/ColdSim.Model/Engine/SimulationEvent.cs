namespace ColdSim.Model.Engine;

/// <summary>What can happen at an instant of a run.</summary>
public enum EventKind
{
    /// <summary>The thermostat calls for heat. Value: inside air. [K]</summary>
    HeatCalled,

    /// <summary>The thermostat is satisfied. Value: inside air. [K]</summary>
    HeatSatisfied,

    /// <summary>The burner lights. Value: delivery pressure. [Pa gauge]</summary>
    BurnerOn,

    /// <summary>The burner goes out at the end of a call. Value: inside air. [K]</summary>
    BurnerOff,

    /// <summary>A try at ignition fails for want of pressure. Value: delivery pressure. [Pa gauge]</summary>
    IgnitionFailed,

    /// <summary>The flame is lost for want of pressure. Value: delivery pressure. [Pa gauge]</summary>
    FlameLost,

    /// <summary>The furnace locks out. Value: inside air. [K]</summary>
    Lockout,

    /// <summary>The furnace tries again by itself after lockout. Value: inside air. [K]</summary>
    LockoutRetry,

    /// <summary>Somebody awake resets the furnace. Value: inside air. [K]</summary>
    LockoutReset,

    /// <summary>What is asked for is no longer given. Value: cylinder pressure. [Pa gauge]</summary>
    ShortBegins,

    /// <summary>What is asked for is given again, or nothing is asked any more. Value: cylinder pressure. [Pa gauge]</summary>
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

    /// <summary>Somebody has changed to another cylinder. Value: propane left in the one that was shut. [kg]</summary>
    CylinderChanged,

    /// <summary>A changeover's reserve side begins to feed. Value: propane left on the service side. [kg]</summary>
    ReserveFeeds,

    /// <summary>The service side of a changeover feeds alone again. Value: propane left on the service side. [kg]</summary>
    ServiceAlone,

    /// <summary>A blanket switches on. Value: liquid temperature. [K]</summary>
    BlanketOn,

    /// <summary>A blanket switches off. Value: liquid temperature. [K]</summary>
    BlanketOff,

    /// <summary>A cylinder warms past 125 °F, the limit for compressed-gas cylinders. Value: liquid temperature. [K]</summary>
    CylinderHot,

    /// <summary>It has cooled below that again. Value: liquid temperature. [K]</summary>
    CylinderCooled,

    /// <summary>The water of a node begins to freeze. Value: outside air. [K]</summary>
    WaterFreezes,

    /// <summary>The water of a node is ice through and through. Value: outside air. [K]</summary>
    WaterSolid,

    /// <summary>The last ice of a node has thawed. Value: outside air. [K]</summary>
    WaterThawed,

    /// <summary>Damp begins to settle on the coldest surface. Value: that surface. [K]</summary>
    DampSettles,

    /// <summary>It no longer does. Value: that surface. [K]</summary>
    DampGone,

    /// <summary>The battery is flat and voltage is gone. Value: charge per rated.</summary>
    VoltageGone,

    /// <summary>Voltage is back. Value: charge per rated.</summary>
    VoltageBack,

    /// <summary>The generator starts. Value: charge per rated.</summary>
    GeneratorStarts,

    /// <summary>The generator stops, with the battery charged or at the end of its hours. Value: charge per rated.</summary>
    GeneratorStops,

    /// <summary>The generator dies for want of gas. Value: delivery pressure. [Pa gauge]</summary>
    GeneratorStarved,
}

/// <summary>Something that happened, and when.</summary>
/// <param name="Time_s">Seconds since the run's start.</param>
/// <param name="Kind">What.</param>
/// <param name="Value">The number that goes with the kind.</param>
/// <param name="Cylinder">Place of the cylinder it happens to, or of the node; 0 where it is none's.</param>
public readonly record struct SimulationEvent(double Time_s, EventKind Kind, double Value, int Cylinder = 0);
