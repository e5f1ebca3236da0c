namespace ColdSim.Model.Electrical;

/// <summary>Something that draws from the 12 V side at a known rate, such as lights, boards or a device for breathing. SI units.</summary>
public sealed record ElectricLoad
{
    /// <summary>What it is called in messages.</summary>
    public required string Name { get; init; }

    /// <summary>Power while it is on, averaged over its own switching. [W]</summary>
    public required double Power_W { get; init; }

    /// <summary>Hours of the day in which it is on; empty means always.</summary>
    public IReadOnlyList<ClockWindow> Hours { get; init; } = [];
}
