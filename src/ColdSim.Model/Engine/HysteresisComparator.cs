using System.Runtime.CompilerServices;

namespace ColdSim.Model.Engine;

/// <summary>A comparator with hysteresis: high at or above one level, low below a lower one, unchanged in the dead band between.</summary>
/// <param name="rise">At or above this it becomes high.</param>
/// <param name="fall">Below this it becomes low.</param>
internal sealed class HysteresisComparator(double rise, double fall)
{
    /// <summary>Whether its output is high.</summary>
    public bool IsHigh { get; private set; }

    /// <summary>Sets the output from the initial value, without hysteresis.</summary>
    public void Begin(double value) => IsHigh = value >= rise;

    /// <summary>Event function: distance of the value past the level at which the output changes; above 0 it does. Never for NaN.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double EventValue(double value) => double.IsNaN(value) ? -1 : IsHigh ? fall - value : value - rise;

    /// <summary>Updates the output.</summary>
    /// <returns>Whether the output changed.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool Update(double value)
    {
        bool before = IsHigh;
        if (IsHigh ? value < fall : value >= rise) IsHigh = !IsHigh;
        return IsHigh != before;
    }
}
