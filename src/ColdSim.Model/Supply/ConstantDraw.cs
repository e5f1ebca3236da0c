namespace ColdSim.Model.Supply;

/// <summary>A draw of gas at a known rate beside the furnace or instead of it, such as a refrigerator's burner. SI units.</summary>
public sealed record ConstantDraw
{
    /// <summary>What it is called in messages.</summary>
    public required string Name { get; init; }

    /// <summary>Gross heat input while it runs and delivery is full. [W]</summary>
    public required double Input_W { get; init; }

    /// <summary>Hours of the day in which it runs; empty means always.</summary>
    public IReadOnlyList<ClockWindow> Hours { get; init; } = [];

    /// <summary>Delivery gauge pressure from which it takes its full input. [Pa gauge]</summary>
    public double FullPressure_Pa { get; init; } = 10.5 * 249.08890833333;

    /// <summary>Delivery gauge pressure below which its flame is lost. [Pa gauge]</summary>
    public double MinimumPressure_Pa { get; init; } = 6.5 * 249.08890833333;

    /// <summary>Whether its valve or board needs 12 V.</summary>
    public bool NeedsPower { get; init; }

    /// <summary>Part of the input that warms the coach.</summary>
    public double HeatToCoach_frac { get; init; }
}
