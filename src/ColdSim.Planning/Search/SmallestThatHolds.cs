namespace ColdSim.Planning.Search;

/// <summary>A value found by trying: it holds, and a tolerance less does not.</summary>
/// <param name="Value">The least value that holds, in the caller's unit.</param>
/// <param name="AtStart">Whether already the start of the range holds, so that nothing below it was tried.</param>
/// <param name="Tries">How many values were tried.</param>
internal sealed record LeastFound(double Value, bool AtStart, int Tries);

/// <summary>The least value of something, within a range and to a tolerance, with which something holds; each value is tried in full.</summary>
/// <remarks>
/// Values are counted in whole tolerances from the start of the range, so that the answer is one of a fixed set, the same on every
/// machine, and "a tolerance below" is itself a value that was tried. A question that is not monotone, holding in islands, still gets
/// an answer for which the promise is true: this value holds and the one a tolerance below does not.
/// To look for the greatest value that holds, run the range backwards: a start above the end.
/// </remarks>
internal static class SmallestThatHolds
{
    /// <summary>Looks for it.</summary>
    /// <param name="from">Start of the range, where it would be best to be.</param>
    /// <param name="to">End of the range, the last that is within reach.</param>
    /// <param name="tolerance">Distance of the values that are tried; above zero.</param>
    /// <param name="holds">Whether it holds with a value; the same for the same value.</param>
    /// <returns>What was found; null where even the end does not hold.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A tolerance that is not above zero, or a range that is not finite.</exception>
    public static LeastFound? Find(double from, double to, double tolerance, Func<double, bool> holds)
    {
        ArgumentNullException.ThrowIfNull(holds);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        if (!double.IsFinite(from) || !double.IsFinite(to))
            throw new ArgumentOutOfRangeException(nameof(to), to, "The range must be finite.");
        int last = (int)Math.Ceiling(Math.Abs(to - from) / tolerance - 1e-9);
        int tries = 0;
        bool Holds(int step)
        {
            tries++;
            return holds(ValueAt(step));
        }

        double ValueAt(int step) => step == last ? to : from + Math.Sign(to - from) * step * tolerance;

        if (!Holds(last)) return null;
        if (last == 0 || Holds(0)) return new LeastFound(from, true, tries);

        // Between one that does not hold and one that does there is a step at which it begins to.
        int no = 0, yes = last;
        while (yes - no > 1)
        {
            int middle = no + (yes - no) / 2;
            if (Holds(middle)) yes = middle;
            else no = middle;
        }

        return new LeastFound(ValueAt(yes), false, tries);
    }
}
