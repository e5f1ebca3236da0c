using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Fills empty cells between two known values by linear interpolation, where these are near enough.</summary>
/// <remarks>A row waits only until each of its cells is known, filled or given up, so never for longer than the longest span.</remarks>
/// <param name="columns">The columns that the file has.</param>
/// <param name="longest">The longest span that is filled.</param>
/// <param name="next">Receives the rows, in order.</param>
internal sealed class MissingValues(IEnumerable<MissingColumn> columns, TimeSpan longest, RowHandler next)
{
    // The waiting rows are moved to the front of the list once this many before them have been passed on.
    private const int CompactAfter = 1024;

    private readonly MissingColumn[] _columns = [.. columns];
    private readonly List<WeatherRow> _rows = [];
    private int _head;
    private long _passed;

    /// <summary>Receives the next row.</summary>
    public void Take(in WeatherRow row)
    {
        long place = _passed + _rows.Count - _head;
        _rows.Add(row);
        long settled = place + 1;
        foreach (MissingColumn column in _columns)
            settled = Math.Min(settled, Settled(column, place, row));
        PassOn(settled);
    }

    /// <summary>Passes on the last rows and notes what was filled.</summary>
    public void Finish(WeatherFaults faults)
    {
        PassOn(long.MaxValue);
        foreach (MissingColumn column in _columns.Where(c => c.Empty > 0))
        {
            // For a file without sun at all the assumption in its place says so.
            if (column.Name == "sun" && column.Known is null)
                continue;
            string rest = column.Filled == column.Empty ? "" : FormattableString.Invariant($", {column.Empty - column.Filled} left to the stand-in");
            faults.Note($"{faults.File}: {column.Name} is empty in {column.Empty} rows; {column.Filled} filled in between their neighbours{rest}");
        }
    }

    /// <summary>The place before which no cell of a column can still be filled.</summary>
    private long Settled(MissingColumn column, long place, in WeatherRow row)
    {
        if (column.Value(row) is not { } after)
        {
            column.Empty++;
            return column.Known is { } before && row.Time - before.Time <= longest ? before.Place + 1 : place + 1;
        }

        if (column.Known is { } known && place - known.Place > 1 && row.Time - known.Time <= longest)
        {
            TimeSpan span = row.Time - known.Time;
            for (long j = known.Place + 1; j < place; j++)
            {
                int at = (int)(j - _passed) + _head;
                _rows[at] = column.With(_rows[at], known.Value + ((after - known.Value) * ((_rows[at].Time - known.Time) / span)));
                column.Filled++;
            }
        }

        column.Known = (place, row.Time, after);
        return place + 1;
    }

    private void PassOn(long settled)
    {
        for (; _head < _rows.Count && _passed < settled; _head++, _passed++)
            next(_rows[_head]);
        if (_head == _rows.Count)
            _rows.Clear();
        else if (_head > CompactAfter && _head > _rows.Count / 2)
            _rows.RemoveRange(0, _head);
        else
            return;
        _head = 0;
    }
}

/// <summary>A column that may have empty cells, and how many of them were found and filled.</summary>
/// <param name="name">Its name in messages.</param>
/// <param name="value">Its value in a row.</param>
/// <param name="with">The row with its value set.</param>
internal sealed class MissingColumn(string name, Func<WeatherRow, double?> value, Func<WeatherRow, double, WeatherRow> with)
{
    public string Name => name;

    public Func<WeatherRow, double?> Value => value;

    public Func<WeatherRow, double, WeatherRow> With => with;

    /// <summary>The last known value; null before the first.</summary>
    public (long Place, DateTimeOffset Time, double Value)? Known { get; set; }

    public long Empty { get; set; }

    public long Filled { get; set; }
}
