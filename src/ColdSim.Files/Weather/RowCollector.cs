using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>
/// Receives the rows of a file one by one, skips those outside the requested window, and passes on the others complete: order, gaps, empty
/// cells and irradiance. It holds no more rows than a gap that may be bridged has.
/// </summary>
internal sealed class RowCollector(WeatherRequest request, WeatherFaults faults, IRowSink sink)
{
    private readonly HashSet<WeatherColumn> _columns = [];
    private UnusualRows _unusual = new(faults);
    private WeatherGaps _gaps = new(request.Bridge);
    private bool _hasSkippedRows;
    private bool _isCut;
    private long _read;
    private (DateTimeOffset Time, int Line)? _last;
    private DateTimeOffset? _first;
    private DateTimeOffset? _firstAfterWindow;
    private DateTimeOffset _before;
    private long _kept;
    private bool _begun;
    private MissingValues? _missing;
    private IrradianceAtTimestamps? _sun;

    /// <summary>The longest gaps that are bridged; known when finished.</summary>
    public IReadOnlyList<WeatherGap> Gaps { get; private set; } = [];

    /// <summary>How many gaps are bridged.</summary>
    public long AllGaps { get; private set; }

    /// <summary>The line of the last row; 1 before the first.</summary>
    public int LastLine => _last?.Line ?? 1;

    /// <summary>The layout that is read.</summary>
    public WeatherFormat Format { get; set; }

    /// <summary>Rows outside the window.</summary>
    public long Outside { get; private set; }

    /// <summary>Whether its months come from different years.</summary>
    public bool IsTypicalYear { get; set; }

    /// <summary>Whether its rows may be put on another year.</summary>
    public bool TakesYear { get; set; }

    /// <summary>Whether the rows are past the window, so that the rest of the file need not be read.</summary>
    public bool IsPastWindow => _isCut || request.To is { } to && _last is { } last && to.CompareTo(last.Time) < 0;

    /// <summary>Set where a row could not be read; it leaves a gap that is not in the file. A row outside the days wanted is no loss.</summary>
    public bool HasSkippedRows
    {
        get => _hasSkippedRows;
        set => _hasSkippedRows |= value && !faults.IsOutside;
    }

    /// <summary>Rows of the file without an hour's temperature: sums of days, hours without a reading.</summary>
    public long LeftOut { get; set; }

    /// <summary>Checks the numbers in its columns.</summary>
    public ColumnCheck Values { get; } = new(faults);

    /// <summary>The unit of the air where somebody chose it; null where the layout does.</summary>
    public string? AirUnit { get; set; }

    public IrradianceAveraging Averaging { get; set; }

    public WeatherStation Station { get; set; } = new();

    public string Clock { get; set; } = "";

    /// <summary>The fault of a file without rows.</summary>
    public string EmptyMessage { get; set; } = "no rows below the headings";

    /// <summary>Declares that the file has a column.</summary>
    public void DeclareColumn(WeatherColumn column) => _columns.Add(column);

    /// <summary>Adds the next row.</summary>
    public void Add(in WeatherRow row, int line)
    {
        faults.At = row.Time;
        if (_isCut || (_last is { } last && !Follows(last, row.Time, line)))
            return;
        _last = (row.Time, line);
        _read++;
        _first ??= row.Time;
        if (request.From?.CompareTo(row.Time) > 0 || request.To?.CompareTo(row.Time) < 0)
        {
            Outside++;
            if (request.To?.CompareTo(row.Time) < 0)
                _firstAfterWindow ??= row.Time;
            return;
        }
        if (_kept > 0 && request.Wanted is { } wanted && row.Time - _before > request.Bridge && CutAt(_before, row.Time, wanted))
            return;
        if (_kept++ > 0)
            _gaps.Between(_before, row.Time, line);
        _before = row.Time;
        if (faults.Any)
            return;
        _sun ??= new IrradianceAtTimestamps(Averaging, PassOn);
        _missing ??= new MissingValues(MayBeMissing(), request.Bridge, _sun.Take);
        _missing.Take(_unusual.Take(row, line));
    }

    /// <summary>Checks the whole and passes on the last rows.</summary>
    /// <param name="line">The last line of the file.</param>
    public void Finish(int line)
    {
        faults.At = null;
        if (_kept < 2 && !faults.Any)
            TooFew(Math.Max(1, line));
        if (LeftOut > _read && _read > 0)
            faults.Warn($"{faults.File}: only {_read} of {_read + LeftOut} rows are used; {LeftOut} have no hour's temperature, as sums of days have none");
        if (!HasSkippedRows)
            (Gaps, AllGaps) = _gaps.Check(faults);
        if (faults.Any)
            return;
        _missing?.Finish(faults);
        _unusual.Finish();
        Values.Finish();
        _sun?.Finish();
        if (_sun is { Changed: true })
            faults.Note($"{faults.File}: sun: means over the hour {(Averaging == IrradianceAveraging.HourEnding ? "before" : "after")} each time; each time is given the mean of the hours on its two sides");
    }

    // A gap outside the days wanted is no fault: what lies behind it, as seen from them, is not kept. Whether the row that was just read is not.
    private bool CutAt(DateTimeOffset before, DateTimeOffset after, (DateTimeOffset From, DateTimeOffset To) wanted)
    {
        string gap = $"between {InstantText.Of(before)} and {InstantText.Of(after)}, {WeatherGaps.Hours(after - before)} h";
        if (before >= wanted.To)
        {
            faults.Note($"{faults.File}: nothing {gap}; rows after it are not used, they lie after the days wanted");
            _isCut = true;
            return true;
        }

        if (after > wanted.From || _hasSkippedRows || faults.Any)
            return false;
        faults.Note($"{faults.File}: nothing {gap}; rows before it are not used, they lie before the days wanted");
        (_gaps, _unusual, _sun, _missing, _kept, _begun) = (new(request.Bridge), new(faults), null, null, 0, false);
        sink.Restart();
        return false;
    }

    private void PassOn(in WeatherRow row)
    {
        if (!_begun)
            sink.Begin(new WeatherSource(Format, Clock, Station));
        _begun = true;
        sink.Take(row);
    }

    private List<MissingColumn> MayBeMissing()
    {
        (MissingColumn Column, WeatherColumn[] From)[] all =
        [
            (new("wind", r => r.Wind_m_s, (r, v) => r with { Wind_m_s = v }), [WeatherColumn.Wind]),
            (new("dew point", r => r.DewPoint_K, (r, v) => r with { DewPoint_K = Math.Min(v, r.Air_K) }), [WeatherColumn.DewPoint, WeatherColumn.Humidity]),
            (new("sun", r => r.Sun_W_m2, (r, v) => r with { Sun_W_m2 = v }), [WeatherColumn.Sun]),
            (new("cloud", r => r.Cloud_frac, (r, v) => r with { Cloud_frac = v }), [WeatherColumn.Cloud]),
            (new("pressure", r => r.Pressure_Pa, (r, v) => r with { Pressure_Pa = v }), [WeatherColumn.Pressure]),
        ];
        List<MissingColumn> may = [];
        foreach ((MissingColumn column, WeatherColumn[] from) in all)
        {
            if (Array.Exists(from, _columns.Contains))
                may.Add(column);
        }

        return may;
    }

    private void TooFew(int line)
    {
        string accepted = "accepted: two or more";
        if (Outside > 0 && _first is { } first && _last is { } last)
        {
            string what = _kept == 0 ? "no row" : "only one row";

            // Nothing is read after the window, so the last row that was read need not be the file's last.
            faults.Report(line, 1, $"{what} in the window asked for", _firstAfterWindow switch
            {
                null => $"the file goes from {InstantText.Of(first)} to {InstantText.Of(last.Time)}",
                { } after when after == first => $"the file begins at {InstantText.Of(first)}",
                { } after => $"the file begins at {InstantText.Of(first)}, its first row behind the window is at {InstantText.Of(after)}",
            });
            return;
        }
        faults.Report(line, 1, _kept == 0 ? EmptyMessage : "only one row", accepted);
    }

    private bool Follows((DateTimeOffset Time, int Line) last, DateTimeOffset time, int line)
    {
        if (time > last.Time)
            return true;
        string before = FormattableString.Invariant($"{InstantText.Of(last.Time)} in line {last.Line}");
        if (time == last.Time)
            faults.Report(line, 1, $"{InstantText.Of(time)} is the same instant as {before}");
        else
            faults.Report(line, 1, $"{InstantText.Of(time)} comes after {before}", "accepted: rows in order of time");
        return false;
    }
}
