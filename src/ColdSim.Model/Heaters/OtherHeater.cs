using ColdSim.Model.Appliances;

namespace ColdSim.Model.Heaters;

/// <summary>Supply of a heater beside the furnace.</summary>
public enum HeaterSupply
{
    /// <summary>Shore power: only where there is a hookup, and no more than its breaker leaves.</summary>
    ShorePower,

    /// <summary>Diesel, wood or whatever else of its own, burnt behind a flue.</summary>
    OwnFuel,
}

/// <summary>Heat that comes from neither the furnace nor a gas appliance. SI units.</summary>
public sealed record OtherHeater
{
    /// <summary>Name for messages.</summary>
    public required string Name { get; init; }

    /// <summary>Heat into the coach's air while it is on. [W]</summary>
    public required double Output_W { get; init; }

    /// <summary>Its supply.</summary>
    public required HeaterSupply Supply { get; init; }

    /// <summary>Hours in which it may be on; empty for always.</summary>
    public IReadOnlyList<ClockWindow> Hours { get; init; } = [];

    /// <summary>Its own thermostat on the coach's air; null where it is on for all its hours.</summary>
    public SwitchBand? Thermostat { get; init; }
}
