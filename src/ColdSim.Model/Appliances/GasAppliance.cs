using ColdSim.Model.Nodes;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Appliances;

/// <summary>A burner beside the furnace: what it takes, when, and where its heat goes. SI units, pressures gauge.</summary>
public abstract record GasAppliance
{
    /// <summary>Name for messages.</summary>
    public required string Name { get; init; }

    /// <summary>Gross heat input at full delivery pressure, at sea level where it is a plate's. [W]</summary>
    public required double Input_W { get; init; }

    /// <summary>Hours of the day in which it may burn; empty means always.</summary>
    public IReadOnlyList<ClockWindow> Hours { get; init; } = [];

    /// <summary>Delivery pressure from which it takes its full input. [Pa gauge]</summary>
    public double FullPressure_Pa { get; init; } = 10.5 * InchOfWater_Pa;

    /// <summary>Delivery pressure below which its flame is lost: of several appliances the one with the highest starves first. [Pa gauge]</summary>
    public double MinimumPressure_Pa { get; init; } = 6.5 * InchOfWater_Pa;

    /// <summary>Rule by which altitude lowers a plate's input.</summary>
    public AltitudeRule Altitude { get; init; } = AltitudeRule.FixedOrifice;

    /// <summary>Whether it stops when the 12 V are gone: a board that holds its valve open.</summary>
    public bool NeedsPower { get; init; }

    /// <summary>Power that it takes from a hookup instead of gas, where it can and there is one; 0 where it burns gas alone. [W]</summary>
    public double ElectricInput_W { get; init; }

    /// <summary>Whether it is turned off, as on the road.</summary>
    public bool IsOff { get; init; }

    /// <summary>Input at the site's height. [W]</summary>
    /// <param name="elevation_m">Height of the site. [m]</param>
    public virtual double InputAt_W(double elevation_m) => BurnerInput.At_W(Input_W, Altitude, elevation_m);

    /// <summary>Part of its heat that warms the coach's air.</summary>
    public virtual double WarmsCoach_frac => 0;

    /// <summary>Part of its heat that goes into <see cref="Node"/>; negative where it cools it.</summary>
    public virtual double WarmsNode_frac => 0;

    /// <summary>The same of power from a hookup: an element in the water loses nothing up a flue.</summary>
    public virtual double ElectricWarmsNode_frac => WarmsNode_frac;

    /// <summary>The same appliance turned off and with nothing drawn from it, as on the road.</summary>
    public virtual GasAppliance Shut() => this with { IsOff = true };

    /// <summary>Whether what it burns stays in the coach as damp air.</summary>
    public virtual bool IsUnvented => false;

    /// <summary>The thing with a temperature of its own that it heats or cools; null where there is none.</summary>
    public virtual ThermalNode? Node => null;

    /// <summary>The thermostat on its node, or on the coach's air where it has none; null where it burns by the clock alone.</summary>
    public virtual SwitchBand? Thermostat => null;
}

/// <summary>A comparator with hysteresis on a temperature: on past one limit, off past the other. Heats where on lies below off, cools where above. [K]</summary>
/// <param name="On_K">It switches on here. [K]</param>
/// <param name="Off_K">It switches off here. [K]</param>
public readonly record struct SwitchBand(double On_K, double Off_K)
{
    /// <summary>Event function: distance of a temperature past the one at which it switches; above 0 it does. [K]</summary>
    /// <param name="on">Whether it is on.</param>
    /// <param name="t_K">What it senses. [K]</param>
    public double EventValue_K(bool on, double t_K)
        => On_K < Off_K
            ? on ? t_K - Off_K : On_K - t_K
            : on ? Off_K - t_K : t_K - On_K;
}
