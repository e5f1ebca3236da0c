using ColdSim.Physics.Units;

namespace ColdSim.Planning.Harms;

/// <summary>How badly a night or a whole run went for the people and the water in it.</summary>
/// <param name="FreezingHours">Hours in which water of a declared pipe or tank was frozen, or inside was below freezing. [h]</param>
/// <param name="Lowest_K">The lowest temperature of inside and of the declared water; infinite where neither is known. [K]</param>
/// <param name="NoHeatHours">Hours in which the thermostat called for heat and the furnace did not burn, its own starts left out. [h]</param>
/// <param name="ColdKelvinHours">Inside below the set point, beyond the thermostat's own swing, summed over time. [K h]</param>
/// <param name="ShortMinutes">Minutes in which an appliance got less gas than it needed. [min]</param>
public readonly record struct Harm(double FreezingHours, double Lowest_K, double NoHeatHours, double ColdKelvinHours, double ShortMinutes)
{
    /// <summary>The freezing point of water. [K]</summary>
    public const double Freezing_K = ConversionFactors.ZeroCelsius_K;

    /// <summary>No harm.</summary>
    public static Harm None { get; } = new(0, double.PositiveInfinity, 0, 0, 0);

    /// <summary>The lowest temperature as far as it is harm: the freezing point where nothing was below it. [K]</summary>
    public double LowestFreezing_K => Lowest_K < Freezing_K ? Lowest_K : Freezing_K;

    /// <summary>Two nights together.</summary>
    /// <param name="a">The one.</param>
    /// <param name="b">The other.</param>
    public static Harm operator +(Harm a, Harm b) => Add(a, b);

    /// <summary>Two nights together: hours and minutes add up, and the lower of the lowest temperatures counts.</summary>
    /// <param name="left">The one.</param>
    /// <param name="right">The other.</param>
    public static Harm Add(Harm left, Harm right) => new(
        left.FreezingHours + right.FreezingHours, Math.Min(left.Lowest_K, right.Lowest_K), left.NoHeatHours + right.NoHeatHours,
        left.ColdKelvinHours + right.ColdKelvinHours, left.ShortMinutes + right.ShortMinutes);
}
