namespace ColdSim.Files.Weather;

/// <summary>Numbers of nines alone, such as -99.9 or 9999, that stand for "not known" in many weather files.</summary>
/// <remarks>
/// A number below zero of this form counts as a mark in every column: nothing that is measured here is as low. One above zero counts only where the
/// column's limits exclude it, or its layout says so: 99 may be a cloud cover in per cent.
/// </remarks>
internal sealed class MissingMarks
{
    /// <summary>What is said of them.</summary>
    public static readonly UnusualValue Declared = new(
        "every column", "a number of nines alone, such as -99.9, 999 or 9999, below zero or outside the column's limits; it counts as not known", "an empty field where a value is not known", UnusualValue.CommonPractice);

    private readonly List<Mark> _found = [];

    /// <summary>Whether a value is such a mark.</summary>
    /// <param name="value">As it is written, in the file's unit.</param>
    /// <param name="isOutside">Whether it lies outside the column's limits.</param>
    public static bool IsMark(double value, bool isOutside)
    {
        if (value >= 0 && !isOutside)
            return false;
        double nines = Math.Abs(value);
        return nines is 99 or 999 or 9999 or 99_999 or 999_999 || (nines is > 99 and < 100_000 && Math.Round(nines * 100) is 9990 or 9999 or 99_990 or 99_999 or 999_990 or 999_999);
    }

    /// <summary>Counts one.</summary>
    public void Add(WeatherColumn column, int line, double number)
    {
        foreach (Mark mark in _found)
        {
            if (mark.Column == column)
            {
                mark.More++;
                return;
            }
        }

        _found.Add(new(column, line, number));
    }

    /// <summary>Warns of those that were found.</summary>
    public void Warn(WeatherFaults faults)
    {
        foreach (Mark mark in _found)
        {
            string more = mark.More == 0 ? "" : FormattableString.Invariant($" and {mark.More} more");
            faults.Warn(Declared, FormattableString.Invariant($"{faults.File}:{mark.Line}: {mark.Column.Name} {mark.Number}{more}: read as not known"));
        }
    }

    // The first in a column, and how many follow.
    private sealed class Mark(WeatherColumn column, int line, double number)
    {
        public WeatherColumn Column => column;

        public int Line => line;

        public double Number => number;

        public int More { get; set; }
    }
}
