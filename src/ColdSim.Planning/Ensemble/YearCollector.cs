using ColdSim.Model.Weather;

namespace ColdSim.Planning.Ensemble;

/// <summary>
/// Takes a record row by row and keeps what the runs of its years need: in each year the rows within the run's days, one before them and
/// one after.
/// </summary>
/// <remarks>
/// A year without the start's day is passed over (29 February), and so is one whose days the record does not cover from the last row at or
/// before their start to the first at or after their end, without a gap of over 3 h.
/// </remarks>
internal sealed class YearCollector
{
    // What a reader bridges unasked; a year with a longer gap in these days is left out.
    private static readonly TimeSpan LongestGap = TimeSpan.FromHours(3);

    // Further out a start and its offset may be no instant.
    private const int FirstYear = 2;
    private const int LastYear = 9998;

    private readonly RecordDays _days;
    private readonly List<WeatherRow> _rows = [];
    private readonly List<RecordYear> _years = [];
    private readonly List<YearLeftOut> _leftOut = [];

    // Their days have begun and not ended; more than one where the days are more than a year.
    private readonly Queue<RecordYear> _begun = [];
    private WeatherRow? _last;
    private int _nextYear;
    private DateTimeOffset _nextStart;

    /// <summary>Begins a record.</summary>
    /// <param name="days">What is run in every year.</param>
    /// <exception cref="ArgumentOutOfRangeException">Days of no length.</exception>
    public YearCollector(RecordDays days)
    {
        ArgumentNullException.ThrowIfNull(days);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(days.Duration, TimeSpan.Zero, nameof(days));
        _days = days;
    }

    /// <summary>How many rows are held.</summary>
    public int Held => _rows.Count + (_last is null ? 0 : 1);

    /// <summary>Takes the next row.</summary>
    /// <param name="row">Later than the one before.</param>
    /// <exception cref="ArgumentException">It is not.</exception>
    public void Add(in WeatherRow row)
    {
        if (_last is not { } last)
            Await(row.Time.Year - 1);
        else if (row.Time > last.Time)
            Follow(last, row);
        else
            throw new ArgumentException($"The row of {row.Time:O} does not come after that of {last.Time:O}.", nameof(row));
        _last = row;
    }

    /// <summary>The years that the record covers; nothing can be added after.</summary>
    public RecordYears Finish()
    {
        LeaveOut(WhyLeftOut.Ends);
        return new RecordYears(_years, _rows, _leftOut);
    }

    private void Follow(in WeatherRow last, in WeatherRow row)
    {
        bool gap = row.Time - last.Time > LongestGap;

        // All of them have these two rows in their days.
        if (gap) LeaveOut(WhyLeftOut.Gap);
        for (; _nextStart < row.Time; Await(_nextYear + 1))
        {
            if (last.Time > _nextStart)
            {
                // The record's first row; the days of that year may be over by then, or not.
                if (last.Time - _nextStart < _days.Duration) _leftOut.Add(new YearLeftOut(_nextYear, WhyLeftOut.Begins));
            }
            else if (gap)
                _leftOut.Add(new YearLeftOut(_nextYear, WhyLeftOut.Gap));
            else
                Begin(last);
        }

        if (_begun.Count == 0) return;
        _rows.Add(row);

        // All are equally long, so they end in the order in which they began.
        while (_begun.TryPeek(out RecordYear? year) && row.Time - year.Start >= _days.Duration)
            _years.Add(_begun.Dequeue() with { Count = _rows.Count - year.First });
    }

    private void Begin(in WeatherRow before)
    {
        // Another year may need the same row.
        if (_rows.Count == 0 || _rows[^1].Time != before.Time) _rows.Add(before);
        _begun.Enqueue(new RecordYear(_nextYear, _nextStart, _rows.Count - 1, 0));
    }

    private void LeaveOut(WhyLeftOut why)
    {
        if (_begun.Count == 0) return;
        _leftOut.AddRange(_begun.Select(y => new YearLeftOut(y.Year, why)));
        _begun.Clear();
        int needed = _years.Count == 0 ? 0 : _years[^1].First + _years[^1].Count;
        _rows.RemoveRange(needed, _rows.Count - needed);
    }

    // The first year from this one on that has the start's day, and when the run starts in it.
    private void Await(int year)
    {
        DateTimeOffset start = _days.Start;
        year = Math.Max(year, FirstYear);
        while (year <= LastYear && start.Day > DateTime.DaysInMonth(year, start.Month)) year++;
        _nextYear = year;
        _nextStart = year > LastYear
            ? DateTimeOffset.MaxValue
            : new(year, start.Month, start.Day, start.Hour, start.Minute, start.Second, start.Offset);
    }
}
