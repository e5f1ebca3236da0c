using ColdSim.Planning.Harms;
using UnitsNet;

namespace ColdSim.Planning.Nights;

/// <summary>One night, from noon to noon or the part of it that was run.</summary>
public sealed record NightReport
{
    /// <summary>1 for the first night.</summary>
    public required int Number { get; init; }

    /// <summary>First instant counted.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>Last instant counted.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>The calendar day on whose evening it begins, after which it is named.</summary>
    public required DateOnly Evening { get; init; }

    /// <summary>Whether the night holds, and the cause that came first where it does not.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>When that cause began; null where the night holds.</summary>
    public DateTimeOffset? FirstFailure { get; init; }

    /// <summary>Time with frozen water in a declared pipe or tank, or with inside below freezing.</summary>
    public Duration FreezingTime { get; init; }

    /// <summary>Lowest temperature of inside and of the water in declared pipes and tanks; null where there is neither.</summary>
    public Temperature? Lowest { get; init; }

    /// <summary>Time in which the thermostat called and the furnace gave no heat, its own starts left out.</summary>
    public Duration NoHeatTime { get; init; }

    /// <summary>Kelvin-hours of inside below the set point, beyond the thermostat's own swing. [K h]</summary>
    public double ColdKelvinHours { get; init; }

    /// <summary>Whether the temperature inside is used in place of water, because no pipe or tank is declared.</summary>
    public bool InsideForWater => InsideLow is not null && !Water.Any(w => w.HoldsWater);

    /// <summary>How badly the night went.</summary>
    public Harm Harm => new(
        FreezingTime.Hours, Lowest?.Kelvins ?? double.PositiveInfinity, NoHeatTime.Hours, ColdKelvinHours, ShortTime.Minutes);

    /// <summary>Lowest outside air.</summary>
    public required Temperature OutsideLow { get; init; }

    /// <summary>Lowest inside air; null without a coach.</summary>
    public required Temperature? InsideLow { get; init; }

    /// <summary>When it was coldest inside; null without a coach.</summary>
    public required DateTimeOffset? InsideLowAt { get; init; }

    /// <summary>Time with the furnace lit.</summary>
    public required Duration BurnerTime { get; init; }

    /// <summary>Times the furnace lit.</summary>
    public required int BurnerStarts { get; init; }

    /// <summary>Gas drawn from the cylinder.</summary>
    public required Mass GasUsed { get; init; }

    /// <summary>The same as gross heat.</summary>
    public required Energy GasHeat { get; init; }

    /// <summary>Propane left at dawn, liquid and vapour; null where the run does not reach it.</summary>
    public required Mass? LeftAtDawn { get; init; }

    /// <summary>Propane left at the last instant counted.</summary>
    public required Mass LeftAtEnd { get; init; }

    /// <summary>Propane left at dawn in each cylinder; empty where the run does not reach it.</summary>
    public IReadOnlyList<Mass> EachLeftAtDawn { get; init; } = [];

    /// <summary>Propane left in each cylinder at the last instant counted.</summary>
    public IReadOnlyList<Mass> EachLeftAtEnd { get; init; } = [];

    /// <summary>The same of each at dawn, or at the end of what was run where that is not reached.</summary>
    public IReadOnlyList<Mass> EachLeft => EachLeftAtDawn.Count > 0 ? EachLeftAtDawn : EachLeftAtEnd;

    /// <summary>What became of a mixed gas in each cylinder; empty for propane alone.</summary>
    public IReadOnlyList<BlendReport> Blends { get; init; } = [];

    /// <summary>How long damp settled on the coach's coldest surface; zero where that is not followed.</summary>
    public Duration DampTime { get; init; }

    /// <summary>Changes of cylinder by hand, each of which is a walk outside.</summary>
    public int CylinderChanges { get; init; }

    /// <summary>Times that a changeover's reserve side began to feed.</summary>
    public int ReserveStarts { get; init; }

    /// <summary>Electricity that the blankets took.</summary>
    public Energy BlanketEnergy { get; init; }

    /// <summary>Heat of the heaters beside the furnace.</summary>
    public Energy OtherHeat { get; init; }

    /// <summary>Highest temperature of any cylinder.</summary>
    public Temperature HottestCylinder { get; init; }

    /// <summary>When a cylinder first passed 125 °F; null where none did.</summary>
    public DateTimeOffset? CylinderHotAt { get; init; }

    /// <summary>Place of the cylinder that passed 125 °F first; null where none did.</summary>
    public int? HotCylinder { get; init; }

    /// <summary>Lowest cylinder pressure, gauge.</summary>
    public required Pressure CylinderPressureLow { get; init; }

    /// <summary>Lowest temperature of liquid and shell.</summary>
    public required Temperature LiquidLow { get; init; }

    /// <summary>Lowest delivery pressure while gas was in demand, gauge; null where none was.</summary>
    public required Pressure? DeliveryPressureLow { get; init; }

    /// <summary>What each that can take gas took: the furnace, then the other appliances in their order.</summary>
    public IReadOnlyList<ApplianceGas> GasByAppliance { get; init; } = [];

    /// <summary>Of the appliances that were short of gas, the one that needs the highest pressure; null where none was.</summary>
    public string? FirstToStarve { get; init; }

    /// <summary>How bays, pipes and tanks fared; empty where the rig has none.</summary>
    public IReadOnlyList<WaterReport> Water { get; init; } = [];

    /// <summary>Whether outside was about 20 °F or less with water in a place that nothing heats: an alert, not a finding.</summary>
    public bool WaterAlert => OutsideLow.Kelvins <= WaterReport.Alert_K && Water.Any(w => w.HoldsWater && !w.Heated);

    /// <summary>First undersupply, however short; null where there was none.</summary>
    public required DateTimeOffset? FirstShort { get; init; }

    /// <summary>Undersupply in all.</summary>
    public required Duration ShortTime { get; init; }

    /// <summary>The part of it without a flame and without gas to light one.</summary>
    public Duration NoFlameTime { get; init; }

    /// <summary>The part of it with a flame that got too little.</summary>
    public Duration WeakFlameTime { get; init; }

    /// <summary>The part of it in which the furnace waited in a lockout although there was gas again to light it.</summary>
    public Duration LockedOutTime { get; init; }

    /// <summary>How long gas flowed with less before the regulator than its minimum inlet, of which its plate promises nothing.</summary>
    public Duration BelowMinimumInlet { get; init; }

    /// <summary>Propane left when it first ran short.</summary>
    public required Mass? LeftAtFirstShort { get; init; }

    /// <summary>Temperature of liquid and shell in the feeding cylinder when it first ran short; null where it did not.</summary>
    public Temperature? LiquidAtFirstShort { get; init; }

    /// <summary>Pressure before the regulator when it first ran short, gauge; null where it did not.</summary>
    public Pressure? CylinderPressureAtFirstShort { get; init; }

    /// <summary>When the furnace first locked out; null where it did not.</summary>
    public DateTimeOffset? FirstLockout { get; init; }

    /// <summary>Times the furnace locked out.</summary>
    public int Lockouts { get; init; }

    /// <summary>When the last liquid of a cylinder first boiled off; null where none did.</summary>
    public DateTimeOffset? LiquidGoneAt { get; init; }

    /// <summary>When it was dry; null where it was not.</summary>
    public required DateTimeOffset? DryAt { get; init; }

    /// <summary>Deepest fall of inside air below the set point for lack of gas; zero where there was none.</summary>
    public required TemperatureDelta BelowSetPoint { get; init; }

    /// <summary>The 12 V side; null without a battery.</summary>
    public NightPower? Power { get; init; }

    /// <summary>When inside first fell to freezing; null where it did not.</summary>
    public required DateTimeOffset? FreezingAt { get; init; }

    /// <summary>What the cylinders could give for a time; null where that is not known.</summary>
    public NightCapacity? Capacity { get; init; }

    /// <summary>At the coldest hour outside: the gas, as gross heat, that the cylinder could give without end if weather and fill stayed.</summary>
    public required Power SteadySupplyAtLow { get; init; }

    /// <summary>
    /// The liquid temperature that <see cref="SteadySupplyAtLow"/> allows, without which it means nothing; null where the regulator never
    /// passes what all appliances ask together.
    /// </summary>
    public required Temperature? AllowedLiquid { get; init; }

    /// <summary>At the coldest hour outside: the demand for gas, as gross heat, averaged over that hour.</summary>
    public required Power DemandAtLow { get; init; }
}

/// <summary>The whole run in one row.</summary>
public sealed record RunSummary
{
    /// <summary>The verdict of the first night that does not hold.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>When the cause of that verdict began; null where all nights hold.</summary>
    public DateTimeOffset? FirstFailure { get; init; }

    /// <summary>Time with frozen water in a declared pipe or tank, or with inside below freezing.</summary>
    public Duration FreezingTime { get; init; }

    /// <summary>Lowest temperature of inside and of the water in declared pipes and tanks; null where there is neither.</summary>
    public Temperature? Lowest { get; init; }

    /// <summary>Time in which the thermostat called and the furnace gave no heat, its own starts left out.</summary>
    public Duration NoHeatTime { get; init; }

    /// <summary>Kelvin-hours of inside below the set point, beyond the thermostat's own swing. [K h]</summary>
    public double ColdKelvinHours { get; init; }

    /// <summary>How badly the run went.</summary>
    public Harm Harm => new(
        FreezingTime.Hours, Lowest?.Kelvins ?? double.PositiveInfinity, NoHeatTime.Hours, ColdKelvinHours, ShortTime.Minutes);

    /// <summary>Nights counted.</summary>
    public required int Nights { get; init; }

    /// <summary>Nights that held.</summary>
    public required int NightsHeld { get; init; }

    /// <summary>First undersupply of a night that did not hold.</summary>
    public required DateTimeOffset? FirstShort { get; init; }

    /// <summary>When the cylinder was dry.</summary>
    public required DateTimeOffset? DryAt { get; init; }

    /// <summary>Gas drawn over the run.</summary>
    public required Mass GasUsed { get; init; }

    /// <summary>The same as gross heat.</summary>
    public required Energy GasHeat { get; init; }

    /// <summary>What each that can take gas took over the run.</summary>
    public IReadOnlyList<ApplianceGas> GasByAppliance { get; init; } = [];

    /// <summary>Propane at the start.</summary>
    public required Mass LeftAtStart { get; init; }

    /// <summary>Propane at the end.</summary>
    public required Mass LeftAtEnd { get; init; }

    /// <summary>Changes of cylinder by hand, each of which is a walk outside.</summary>
    public int CylinderChanges { get; init; }

    /// <summary>Electricity that the blankets took.</summary>
    public Energy BlanketEnergy { get; init; }

    /// <summary>Lowest outside air.</summary>
    public required Temperature OutsideLow { get; init; }

    /// <summary>Lowest inside air; null without a coach.</summary>
    public required Temperature? InsideLow { get; init; }

    /// <summary>Undersupply in all.</summary>
    public required Duration ShortTime { get; init; }

    /// <summary>The part of it without a flame and without gas to light one.</summary>
    public Duration NoFlameTime { get; init; }

    /// <summary>The part of it with a flame that got too little.</summary>
    public Duration WeakFlameTime { get; init; }

    /// <summary>The part of it in which the furnace waited in a lockout although there was gas again to light it.</summary>
    public Duration LockedOutTime { get; init; }

    /// <summary>When voltage was first gone in a night that does not hold; null where it never was.</summary>
    public DateTimeOffset? FlatAt { get; init; }

    /// <summary>Time without voltage in all.</summary>
    public Duration VoltageGone { get; init; }

    /// <summary>Lowest charge of the battery, of the rated; null without one.</summary>
    public Ratio? ChargeLow { get; init; }

    /// <summary>When the first of the water began to freeze; null where none did.</summary>
    public DateTimeOffset? WaterFreezesAt { get; init; }
}
