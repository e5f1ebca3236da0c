using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>
/// Takes the rows of a file one by one, passes over those that nobody asked for, and hands the others on finished: order, gaps, empty
/// cells, sun. It holds no more rows than a gap that may be bridged has.
/// </summary>
internal sealed class RowCollector(WeatherRequest request, WeatherFaults faults, IRowSink taker)
{
    private readonly HashSet<WeatherColumn> _columns = [];
    private readonly WeatherGaps _gaps = new(request.Bridge);
    private (DateTimeOffset Time, int Line)? _last;
    private DateTimeOffset? _first;
    private DateTimeOffset? _behind;
    private DateTimeOffset _before;
    private long _kept;
    private bool _begun;
    private MissingValues? _missing;
    private SunAtStamps? _sun;

    /// <summary>The longest gaps that are bridged; known when finished.</summary>
    public IReadOnlyList<WeatherGap> Gaps { get; private set; } = [];

    /// <summary>How many gaps are bridged.</summary>
    public long AllGaps { get; private set; }

    /// <summary>The layout that is read.</summary>
    public WeatherFormat Format { get; set; }

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
    public void DeclareColumn(WeatherColumn column) => _columns.Add(column);

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
            if (request.To?.CompareTo(row.Time) < 0)
                _behind ??= row.Time;
            return;
        }
        if (_kept++ > 0)
            _gaps.Between(_before, row.Time, line);
        _before = row.Time;
        if (faults.Any)
            return;
        _sun ??= new SunAtStamps(Sun, Hand);
        _missing ??= new MissingValues(MayBeMissing(), request.Bridge, _sun.Take);
        _missing.Take(row);
    }

    /// <summary>Checks the whole and hands the last rows on.</summary>
    /// <param name="line">Where the file ends.</param>
    public void Finish(int line)
    {
        if (_kept < 2 && !faults.Any)
            TooFew(Math.Max(1, line));
        if (!Skipped)
            (Gaps, AllGaps) = _gaps.Check(faults);
        if (faults.Any)
            return;
        _missing?.Finish(faults);
        _sun?.Finish();
        if (_sun is { Changed: true })
            faults.Note($"{faults.File}: sun: means over the hour {(Sun == SunMeaning.HourBefore ? "before" : "after")} each time; each time is given the mean of the hours on its two sides");
    }

    private void Hand(in WeatherRow row)
    {
        if (!_begun)
            taker.Begin(new WeatherSource(Format, Clock, Station));
        _begun = true;
        taker.Take(row);
    }

    private IEnumerable<MissingColumn> MayBeMissing()
    {
        (MissingColumn Column, WeatherColumn[] From)[] all =
        [
            (new("wind", r => r.Wind_m_s, (r, v) => r with { Wind_m_s = v }), [WeatherColumn.Wind]),
            (new("dew point", r => r.DewPoint_K, (r, v) => r with { DewPoint_K = v }), [WeatherColumn.DewPoint, WeatherColumn.Humidity]),
            (new("sun", r => r.Sun_W_m2, (r, v) => r with { Sun_W_m2 = v }), [WeatherColumn.Sun]),
            (new("cloud", r => r.Cloud_frac, (r, v) => r with { Cloud_frac = v }), [WeatherColumn.Cloud]),
            (new("pressure", r => r.Pressure_Pa, (r, v) => r with { Pressure_Pa = v }), [WeatherColumn.Pressure]),
        ];
        return all.Where(c => c.From.Any(_columns.Contains)).Select(c => c.Column);
    }

    private void TooFew(int line)
    {
        string accepted = "accepted: two or more";
        if (Outside > 0 && _first is { } first && _last is { } last)
        {
            string what = _kept == 0 ? "no row" : "only one row";

            // Nothing is read behind the window, so its end need not be the file's.
            faults.Report(line, 1, $"{what} in the window asked for", _behind switch
            {
                null => $"the file goes from {WeatherGaps.Text(first)} to {WeatherGaps.Text(last.Time)}",
                { } behind when behind == first => $"the file begins at {WeatherGaps.Text(first)}",
                { } behind => $"the file begins at {WeatherGaps.Text(first)}, its first row behind the window is at {WeatherGaps.Text(behind)}",
            });
            return;
        }
        faults.Report(line, 1, _kept == 0 ? Nothing : "only one row", accepted);
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
