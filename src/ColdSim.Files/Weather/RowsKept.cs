using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Keeps the rows of a file, or, of one with more than may be held, its first, its last and the coldest of each stretch between.</summary>
/// <param name="most">The most rows between the first and the last; null for all.</param>
internal sealed class RowsKept(int? most) : IRowSink
{
    private readonly List<WeatherRow> _rows = [];
    private ColumnCounts _counts = new();
    private WeatherRow _first;
    private WeatherRow _last;
    private WeatherRow _coldest;
    private int _inStretch;

    /// <summary>How many rows each stretch has; 1 where every row is kept.</summary>
    public int Stretch { get; private set; } = 1;

    /// <summary>How many of all rows have a value in each column; null where every row is kept.</summary>
    public ColumnCounts? Counts => Stretch > 1 ? _counts : null;

    /// <summary>What is kept, in order of time.</summary>
    public IReadOnlyList<WeatherRow> Rows
    {
        get
        {
            if (most is null || _counts.Rows == 0)
                return _rows;
            List<WeatherRow> rows = new(_rows.Count + 3) { _first };
            foreach (WeatherRow row in _rows)
                AddLater(rows, row);
            if (_inStretch > 0)
                AddLater(rows, _coldest);
            AddLater(rows, _last);
            return rows;
        }
    }

    public void Begin(WeatherSource source)
    {
    }

    public void Restart()
    {
        _rows.Clear();
        (_counts, _inStretch, Stretch) = (new(), 0, 1);
    }

    public void Take(in WeatherRow row)
    {
        if (most is not { } limit)
        {
            _rows.Add(row);
            return;
        }

        if (_counts.Rows == 0)
            _first = row;
        _counts.Add(row);
        _last = row;
        if (_inStretch == 0 || row.Air_K < _coldest.Air_K)
            _coldest = row;
        if (++_inStretch < Stretch)
            return;
        _rows.Add(_coldest);
        _inStretch = 0;
        if (_rows.Count >= limit)
            JoinStretches();
    }

    private void JoinStretches()
    {
        int kept = 0;
        for (int i = 0; i + 1 < _rows.Count; i += 2)
            _rows[kept++] = _rows[i].Air_K <= _rows[i + 1].Air_K ? _rows[i] : _rows[i + 1];
        if (_rows.Count % 2 == 1)
            _rows[kept++] = _rows[^1];
        _rows.RemoveRange(kept, _rows.Count - kept);
        Stretch *= 2;
    }

    private static void AddLater(List<WeatherRow> rows, WeatherRow row)
    {
        if (row.Time > rows[^1].Time)
            rows.Add(row);
    }
}
