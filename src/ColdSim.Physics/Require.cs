using System.Runtime.CompilerServices;

namespace ColdSim.Physics;

/// <summary>Refuses arguments outside their limits, naming the argument, its value, the limits and the unit.</summary>
internal static class Require
{
    /// <summary>Passes <paramref name="value"/> through when it lies within the limits, both included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the limits, or not a number.</exception>
    // Written so that NaN, which compares false with everything, is refused too.
    internal static double InRange(
        double value, double min, double max, string unit, [CallerArgumentExpression(nameof(value))] string name = "")
        => value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"Must be {min} to {max} {unit}."));
}
