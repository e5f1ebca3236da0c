namespace ColdSim.Planning.Measurements;

/// <summary>What a run has where something was measured, in the unit of the measured value.</summary>
/// <param name="Value">The mean of the quarter hours before and after, so that a burner's cycles even out. [K, Pa over the air's, or V]</param>
/// <param name="Scatter">The standard deviation in that half hour, which is part of the comparison's error.</param>
/// <param name="SetPoint_K">The mean set point in it; NaN without a thermostat. [K]</param>
internal readonly record struct ComputedValue(double Value, double Scatter, double SetPoint_K)
{
    /// <summary>How far before and after a measured time a run is averaged.</summary>
    public static readonly TimeSpan HalfWindow = TimeSpan.FromMinutes(15);

    // Below its set point by less than this, the air is within a thermostat's swing and a furnace's cycle; our choice, no source.
    private const double Swing_K = 1.5;

    /// <summary>Whether the furnace held the air at its set point; false without a thermostat.</summary>
    public bool IsHeld => Value >= SetPoint_K - Swing_K;
}
