namespace ColdSim.App.Screens.Tries;

/// <summary>The values that an adjustment steps through, as the person reads them.</summary>
/// <param name="Low">The lowest.</param>
/// <param name="High">The highest.</param>
/// <param name="Step">From one to the next.</param>
/// <param name="Shown">From the adjustment's value to what is read.</param>
/// <param name="Value">And back.</param>
internal sealed record ValueGrid(double Low, double High, double Step, Func<double, double> Shown, Func<double, double> Value)
{
    private const double Tiny = 1e-6;

    /// <summary>Whole numbers.</summary>
    public static ValueGrid Counts(int low, int high) => new(low, high, 1, v => v, v => v);

    /// <summary>The next value in a direction; null at the end.</summary>
    public double? Next(double value, int direction)
    {
        double steps = Shown(value) / Step;
        double next = Step * (direction > 0 ? Math.Floor(steps + Tiny) + 1 : Math.Ceiling(steps - Tiny) - 1);
        return next > High + Tiny || next < Low - Tiny ? null : Value(next);
    }

    /// <summary>What is read as a value within the limits.</summary>
    public double Within(double shown) => Value(Math.Clamp(shown, Low, High));
}
