namespace ColdSim.Model.Engine;

/// <summary>Watches a value pass a level, up or down, with a band in which nothing changes.</summary>
/// <param name="rise">At or above this it has passed.</param>
/// <param name="fall">Below this it no longer has.</param>
internal sealed class Threshold(double rise, double fall)
{
    /// <summary>Whether the value has passed the level.</summary>
    public bool Passed { get; private set; }

    /// <summary>Sets where it stands before the first look.</summary>
    public void Begin(double value) => Passed = value >= rise;

    /// <summary>How far the value is past the level at which this changes; above 0 it does. A NaN never does.</summary>
    public double EventValue(double value) => double.IsNaN(value) ? -1 : Passed ? fall - value : value - rise;

    /// <summary>Takes in the value.</summary>
    /// <returns>Whether it changed.</returns>
    public bool Update(double value)
    {
        bool before = Passed;
        if (Passed ? value < fall : value >= rise) Passed = !Passed;
        return Passed != before;
    }
}
