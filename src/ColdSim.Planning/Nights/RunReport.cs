using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>What a reported event is, in the words of the person's question.</summary>
public enum ReportedKind
{
    /// <summary>The burner lights.</summary>
    BurnerOn,

    /// <summary>The burner goes out, satisfied.</summary>
    BurnerOff,

    /// <summary>A try at ignition fails.</summary>
    IgnitionFailed,

    /// <summary>The flame is lost.</summary>
    FlameLost,

    /// <summary>The furnace locks out.</summary>
    Lockout,

    /// <summary>The furnace tries again by itself.</summary>
    LockoutRetry,

    /// <summary>Somebody resets it.</summary>
    LockoutReset,

    /// <summary>Supply falls short of demand.</summary>
    ShortBegins,

    /// <summary>Supply meets demand again.</summary>
    ShortEnds,

    /// <summary>The last liquid boils off.</summary>
    LiquidGone,

    /// <summary>No liquid is left and an appliance is undersupplied.</summary>
    Dry,

    /// <summary>Inside falls to freezing.</summary>
    InsideFreezing,

    /// <summary>Inside rises above freezing.</summary>
    InsideThawed,

    /// <summary>Liquid fills the cylinder; the run ends.</summary>
    LiquidFull,

    /// <summary>The relief valve would open; the run ends.</summary>
    ReliefPressure,

    /// <summary>The weather ends before the run.</summary>
    WeatherEnds,

    /// <summary>Somebody changes to another cylinder; the value is what is left in the one that was shut, in kilograms.</summary>
    CylinderChanged,

    /// <summary>The reserve side begins to feed; the value is what is left on the service side, in kilograms.</summary>
    ReserveFeeds,

    /// <summary>The service side feeds alone again; the value is what is left in it, in kilograms.</summary>
    ServiceAlone,

    /// <summary>A cylinder is filled or exchanged; the value is what is in it afterwards, in kilograms.</summary>
    CylinderFilled,

    /// <summary>A cylinder passes 125 °F; the value is its temperature in kelvins.</summary>
    CylinderHot,

    /// <summary>Water begins to freeze; the event names where.</summary>
    WaterFreezes,

    /// <summary>It is ice through and through.</summary>
    WaterSolid,

    /// <summary>The last of that ice has thawed.</summary>
    WaterThawed,

    /// <summary>Damp begins to settle on the coach's coldest surface; the value is that surface's temperature in kelvins.</summary>
    DampSettles,

    /// <summary>The battery is flat and voltage is gone; the value is the charge left, per rated.</summary>
    VoltageGone,

    /// <summary>Voltage is back; the value is the charge, per rated.</summary>
    VoltageBack,

    /// <summary>The generator starts; the value is the charge, per rated.</summary>
    GeneratorStarts,

    /// <summary>The generator stops; the value is the charge, per rated.</summary>
    GeneratorStops,

    /// <summary>The generator dies for want of gas.</summary>
    GeneratorStarved,
}

/// <summary>An event with its instant and what stood at that instant. SI units.</summary>
/// <param name="Time">When.</param>
/// <param name="Kind">What.</param>
/// <param name="Inside_K">Inside air; NaN without a coach. [K]</param>
/// <param name="Liquid_K">Liquid and shell. [K]</param>
/// <param name="CylinderPressure_Pa">Pressure before the regulator; NaN for a filling. [Pa gauge]</param>
/// <param name="Left_kg">Propane left. [kg]</param>
public sealed record ReportedEvent(
    DateTimeOffset Time, ReportedKind Kind, double Inside_K, double Liquid_K, double CylinderPressure_Pa, double Left_kg)
{
    /// <summary>Place of the cylinder it happens to; 0 where it is none's.</summary>
    public int Cylinder { get; init; }

    /// <summary>The pipe, tank or bay whose water it is; null where it is none's.</summary>
    public string? Node { get; init; }

    /// <summary>The number that goes with the kind, SI.</summary>
    public double Value { get; init; }
}

/// <summary>Everything a run says.</summary>
public sealed record RunReport
{
    /// <summary>The question.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The whole run in one row.</summary>
    public required RunSummary Summary { get; init; }

    /// <summary>Night by night.</summary>
    public required IReadOnlyList<NightReport> Nights { get; init; }

    /// <summary>What happened, in order.</summary>
    public required IReadOnlyList<ReportedEvent> Events { get; init; }

    /// <summary>How well energy and mass close.</summary>
    public required LedgerBalance Ledger { get; init; }

    /// <summary>The curves at one-minute spacing.</summary>
    public required RunSeries Series { get; init; }

    /// <summary>Why the run ended.</summary>
    public required RunEnd End { get; init; }

    /// <summary>What happens after the furnace stops, where the scenario says that it does.</summary>
    public Freezing.HeatStop? HeatStop { get; init; }
}
