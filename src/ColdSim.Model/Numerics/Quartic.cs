using System.Runtime.CompilerServices;

namespace ColdSim.Model.Numerics;

/// <summary>How a value departs from that at the start of a step: a polynomial of fourth degree in the part of the step, 0 to 1.</summary>
/// <param name="First">Coefficient of the part.</param>
/// <param name="Second">Of its square.</param>
/// <param name="Third">Of its cube.</param>
/// <param name="Fourth">Of its fourth power.</param>
internal readonly record struct Quartic(double First, double Second, double Third, double Fourth)
{
    /// <summary>The departure after a part of the step.</summary>
    /// <param name="part">Part of the step.</param>
    public double At(double part) => part * (First + part * (Second + part * (Third + part * Fourth)));

    /// <summary>The departure over a piece of the step, from what it is where the piece begins.</summary>
    /// <param name="begin">Where it begins, a part of the step.</param>
    /// <param name="length">How long it is, a part of the step.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Quartic Over(double begin, double length)
    {
        double square = length * length;
        return new Quartic(
            length * (First + begin * (2 * Second + begin * (3 * Third + begin * 4 * Fourth))),
            square * (Second + begin * (3 * Third + begin * 6 * Fourth)),
            square * length * (Third + begin * 4 * Fourth),
            square * square * Fourth);
    }
}
