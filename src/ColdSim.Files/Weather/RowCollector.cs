using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Takes the rows of a file one by one, keeps those asked for, and finishes them: order, gaps, empty cells, sun.</summary>
internal sealed class RowCollector(WeatherRequest request, WeatherFaults faults)
{
    private readonly List<WeatherRow> _rows = [];
    private readonly HashSet<WeatherColumn> _columns = [];
    private readonly WeatherGaps _gaps = new(request.Bridge);
    private (DateTimeOffset Time, int Line)? _last;
    private DateTimeOffset? _first;

    /// <summary>The rows so far.</summary>
    public IReadOnlyList<WeatherRow> Rows => _rows;

    /// <summary>The gaps that are bridged; known when finished.</summary>
    public IReadOnlyList<WeatherGap> Gaps { get; private set; } = [];

    /// <summary>Rows that lay outside the window.</summary>
    public long Outside { get; private set; }

    /// <summary>Whether the window is behind, so that reading on is of no use.</summary>
    public bool Past => request.To is { } to && _last is { } last && to.CompareTo(last.Time) < 0;

    /// <summary>Set where a row could not be read; it leaves a gap that is not in the file.</summary>
    public bool Skipped { get; set; }

    public SunMeaning Sun { get; set; }

    public WeatherStation Station { get; set; } = new();

    public string Clock { get; set; } = "";

    /// <summary>How a complaint about too few rows begins.</summary>
    public string Nothing { get; set; } = "no rows below the headings";

    /// <summary>Says that the file has a column.</summary>
    public void Has(WeatherColumn column) => _columns.Add(column);

    /// <summary>Takes the next row.</summary>
    public void Add(in WeatherRow row, int line)
    {
        if (_last is { } last && !Follows(last, row.Time, line))
            return;
        _last = (row.Time, line);
        _first ??= row.Time;
        if (request.From?.CompareTo(row.Time) > 0 || request.To?.CompareTo(row.Time) < 0)
        {
            Outside++;
            return;
        }
        if (_rows.Count > 0)
            _gaps.Between(_rows[^1].Time, row.Time, line);
        _rows.Add(row);
    }

    /// <summary>Checks the whole and fills what can be filled.</summary>
    /// <param name="line">Where the file ends.</param>
    public void Finish(int line)
    {
        if (_rows.Count < 2 && !faults.Any)
            TooFew(Math.Max(1, line));
        if (!Skipped)
            Gaps = _gaps.Check(_rows, faults);
        if (faults.Any)
            return;
        Fill("wind", [WeatherColumn.Wind], r => r.Wind_m_s, (r, v) => r with { Wind_m_s = v });
        Fill("dew point", [WeatherColumn.DewPoint, WeatherColumn.Humidity], r => r.DewPoint_K, (r, v) => r with { DewPoint_K = v });
        Fill("sun", [WeatherColumn.Sun], r => r.Sun_W_m2, (r, v) => r with { Sun_W_m2 = v });
        Fill("cloud", [WeatherColumn.Cloud], r => r.Cloud_frac, (r, v) => r with { Cloud_frac = v });
        Fill("pressure", [WeatherColumn.Pressure], r => r.Pressure_Pa, (r, v) => r with { Pressure_Pa = v });
        SunAtStamps.Apply(_rows, Sun);
    }

    private void Fill(string name, WeatherColumn[] columns, Func<WeatherRow, double?> value, Func<WeatherRow, double, WeatherRow> with)
    {
        if (columns.Any(_columns.Contains))
            MissingValues.Fill(_rows, request.Bridge, name, value, with, faults);
    }

    private void TooFew(int line)
    {
        string accepted = "accepted: two or more";
        if (Outside > 0 && _first is { } first && _last is { } last)
        {
            string what = _rows.Count == 0 ? "no row" : "only one row";
            faults.Report(line, 1, $"{what} in the window asked for", $"the file goes from {WeatherGaps.Text(first)} to {WeatherGaps.Text(last.Time)}");
            return;
        }
        faults.Report(line, 1, _rows.Count == 0 ? Nothing : "only one row", accepted);
    }

    private bool Follows((DateTimeOffset Time, int Line) last, DateTimeOffset time, int line)
    {
        if (time > last.Time)
            return true;
        string before = FormattableString.Invariant($"{WeatherGaps.Text(last.Time)} in line {last.Line}");
        if (time == last.Time)
            faults.Report(line, 1, $"{WeatherGaps.Text(time)} is the same instant as {before}");
        else
            faults.Report(line, 1, $"{WeatherGaps.Text(time)} comes after {before}", "accepted: rows in order of time");
        return false;
    }
}
