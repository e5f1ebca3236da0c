namespace ColdSim.App.Screens.Drawing;

/// <summary>Lowest and highest value in one column of dots; NaN where there is none.</summary>
internal readonly record struct Extent(double Low, double High)
{
    public static Extent None { get; } = new(double.NaN, double.NaN);

    public bool IsNone => double.IsNaN(Low);

    public Extent With(double value) => double.IsNaN(value) ? this
        : IsNone ? new(value, value) : new(Math.Min(Low, value), Math.Max(High, value));

    /// <summary>The range of both.</summary>
    public Extent With(Extent other) => other.IsNone ? this : With(other.Low).With(other.High);
}
