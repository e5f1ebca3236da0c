namespace ColdSim.Files.Weather;

/// <summary>Decides what a number in a column is: a value, a mark for "not known", or out of range; counts what it reads as 100 %.</summary>
internal sealed class ColumnCheck(WeatherFaults faults)
{
    // Hygrometers in fog and models' clouds are a little over.
    private const double OverFull_frac = 1.1;

    private readonly MissingMarks _marks = new();
    private readonly List<Overfull> _overfull = [];

    public enum Outcome
    {
        Value,
        NotKnown,
        OutOfRange,
    }

    /// <summary>Checks a number.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="number">As it is written, in the file's unit.</param>
    /// <param name="line">Its line.</param>
    /// <param name="si">In SI; set to 1 where it is a little over 100 %.</param>
    public Outcome Of(WeatherColumn column, double number, int line, ref double si)
    {
        (double low, double high) = column.Limits;
        if (si >= low - 1e-9 && si <= high + 1e-9 && number >= 0)
            return Outcome.Value;
        if (si > 1 && si <= OverFull_frac && column.CanBeOverFull)
        {
            Count(column, si);
            si = 1;
            return Outcome.Value;
        }

        bool isWithin = si >= low - 1e-9 && si <= high + 1e-9;
        if (!MissingMarks.IsMark(number, !isWithin))
            return isWithin ? Outcome.Value : Outcome.OutOfRange;
        _marks.Add(column, line, number);
        return Outcome.NotKnown;
    }

    /// <summary>Warns of the marks that were found, and notes what was read as 100 %.</summary>
    public void Finish()
    {
        _marks.Warn(faults);
        foreach (Overfull found in _overfull)
            faults.Note($"{faults.File}: {found.Column.Name} up to {found.Most_frac * 100:0.##} % in {(found.Rows == 1 ? "1 row" : FormattableString.Invariant($"{found.Rows} rows"))}, read as 100 %");
    }

    private void Count(WeatherColumn column, double frac)
    {
        foreach (Overfull found in _overfull)
        {
            if (found.Column == column)
            {
                found.Rows++;
                found.Most_frac = Math.Max(found.Most_frac, frac);
                return;
            }
        }

        _overfull.Add(new(column) { Rows = 1, Most_frac = frac });
    }

    private sealed class Overfull(WeatherColumn column)
    {
        public WeatherColumn Column => column;

        public long Rows { get; set; }

        public double Most_frac { get; set; }
    }
}
