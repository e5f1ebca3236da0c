namespace ColdSim.Model.Blanket;

/// <summary>Supply of a blanket.</summary>
public enum BlanketSupply
{
    /// <summary>The 12 V battery.</summary>
    Battery,

    /// <summary>Shore power: only where there is a hookup.</summary>
    ShorePower,
}

/// <summary>An electric blanket around the side of a cylinder, listed for propane cylinders. SI units.</summary>
/// <remarks>Without power it is insulation, and the cylinder under it boils less.</remarks>
public sealed record BlanketSpecification
{
    /// <summary>Power while on. [W]</summary>
    public required double Power_W { get; init; }

    /// <summary>Wall temperature at which the thermostat switches on. [K]</summary>
    public double On_K { get; init; } = 283.15;

    /// <summary>Wall temperature at which it switches off. [K]</summary>
    public double Off_K { get; init; } = 293.15;

    /// <summary>Part of the cylinder's wall that it covers, the same from bottom to top.</summary>
    public double Coverage_frac { get; init; } = 0.7;

    /// <summary>Insulation outside the element, over the covered wall. [m²·K/W]</summary>
    public double Insulation_m2K_W { get; init; } = 0.25;

    /// <summary>Its supply.</summary>
    public BlanketSupply Supply { get; init; } = BlanketSupply.Battery;

    /// <summary>Hours in which power is there; empty for always.</summary>
    public IReadOnlyList<ClockWindow> Hours { get; init; } = [];

    /// <summary>Whether the thermostat has failed closed, so that it heats whenever there is power.</summary>
    public bool StuckOn { get; init; }
}
