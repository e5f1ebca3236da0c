using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>
/// Gives a time to rows that are dated by month, day and minute. In a typical year the months come from different years; they are
/// put on one nominal year in the order of the file.
/// </summary>
internal sealed class TypicalYear(WeatherRequest request, TimeSpan offset, RowCollector rows, WeatherFaults faults)
{
    private const int DayMinutes = 24 * 60;

    // All are held until the year is put together; two centuries of hours.
    private const int Most = 2_000_000;

    private readonly record struct Stamp(int Year, int Month, int Day, int Minute, WeatherRow? Row, int Line, IReadOnlyList<FileProblem> Problems);

    private readonly List<Stamp> _stamps = [];

    /// <summary>The clock that the rows are shown by; null for that of their dates.</summary>
    public TimeSpan? Shown { get; init; }

    /// <summary>The last day seen, with or without a temperature, for the reader's check of completeness.</summary>
    public (int Month, int Day)? LastDay { get; private set; }

    /// <summary>Whether the last row seen ends its day.</summary>
    public bool EndsWithDay { get; private set; }

    /// <summary>Reads the current record's values and adds them.</summary>
    /// <param name="table">The table.</param>
    /// <param name="year">As written.</param>
    /// <param name="month">1 to 12.</param>
    /// <param name="day">1 to 31.</param>
    /// <param name="minute">Of the day, 1,440 for its end.</param>
    /// <param name="line">Its line.</param>
    public void Take(SourceTable table, int year, int month, int day, int minute, int line)
    {
        WeatherRow? row = null;
        IReadOnlyList<FileProblem> problems = faults.Waiting(() => row = table.Row(default));
        (LastDay, EndsWithDay) = ((month, day), minute is 0 or DayMinutes);
        if (row is not null || problems.Count > 0)
            Add(year, month, day, minute, row, line, problems);
    }

    // Reports a date that does not exist.
    private void Add(int year, int month, int day, int minute, WeatherRow? row, int line, IReadOnlyList<FileProblem> problems)
    {
        // A leap day is a day in any year here: the years are mixed.
        if (month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(2000, month) || minute is < 0 or > DayMinutes || year is < 2 or > 9990)
        {
            faults.Report(line, 1, $"{year}-{month}-{day}, minute {minute} is no time of a year");
            rows.HasSkippedRows = true;
            return;
        }
        // Some files write the end of a day as 00:00 with the same date.
        if (minute == 0 && _stamps is [.., { } last] && last.Month == month && last.Day == day && last.Minute > 0)
            minute = DayMinutes;
        if (_stamps.Count == Most)
            throw new EndlessFileException("longer than 2 million rows") { Line = line };
        _stamps.Add(new Stamp(year, month, day, minute, row, line, problems));
    }

    /// <summary>Passes on the rows, in order.</summary>
    public void Finish()
    {
        rows.TakesYear = true;
        if (_stamps.Count == 0)
            return;
        bool leapDay = _stamps.Any(s => s is { Month: 2, Day: 29, Minute: > 0 });
        bool mixed = Mixed();
        int year = request.Year ?? Nominal(mixed, leapDay);
        rows.IsTypicalYear = mixed;
        if (mixed)
        {
            int low = _stamps.Min(s => s.Year), high = _stamps.Max(s => s.Year);
            faults.Note($"{faults.File}: a typical year, its months from {low} to {high}, one after another as {year}");
        }
        else if (request.Year is not null && year != _stamps[0].Year)
        {
            faults.Note($"{faults.File}: the year {_stamps[0].Year} put on {year}, as asked for");
        }
        Place(year);
    }

    private void Place(int year)
    {
        bool leftOut = false, repeated = false;
        int february28 = -1;
        for (int i = 0; i < _stamps.Count; i++)
        {
            Stamp s = _stamps[i];
            if (i > 0 && s.Month == 1 && _stamps[i - 1].Month == 12)
                year++;
            if (s is { Month: 2, Day: 28 } && (february28 < 0 || i == 0 || _stamps[i - 1] is not { Month: 2, Day: 28 }))
                february28 = i;
            if (s is { Month: 2, Day: 29 } && !DateTime.IsLeapYear(year))
            {
                leftOut = true;
                continue;
            }
            if (i > 0 && s is { Month: 3, Day: 1 } && _stamps[i - 1] is { Month: 2, Day: 28 } && DateTime.IsLeapYear(year))
            {
                repeated = true;
                for (int j = february28; j < i; j++)
                    Place(_stamps[j] with { Line = s.Line, Problems = [] }, At(year, 2, 29, _stamps[j].Minute));
            }
            Place(s, At(year, s.Month, s.Day, s.Minute));
        }
        if (leftOut)
            faults.Note($"{faults.File}: 29 February left out, {year} has none");
        if (repeated)
            faults.Note($"{faults.File}: 29 February is not in the file; the 28th is used twice");
    }

    private void Place(in Stamp stamp, DateTimeOffset time)
    {
        faults.At = time;
        if (stamp.Problems.Count > 0)
        {
            faults.Report(stamp.Problems);
            rows.HasSkippedRows = true;
        }

        if (stamp.Row is { } row)
            rows.Add(row with { Time = time }, stamp.Line);
    }

    private DateTimeOffset At(int year, int month, int day, int minute)
        => new DateTimeOffset(year, month, day, 0, 0, 0, offset).AddMinutes(minute).ToOffset(Shown ?? offset);

    // Mixed where the years do not follow each other as in a calendar.
    private bool Mixed()
    {
        for (int i = 1; i < _stamps.Count; i++)
        {
            int expected = _stamps[i - 1].Year + (_stamps[i - 1].Month == 12 && _stamps[i].Month == 1 ? 1 : 0);
            if (_stamps[i].Year != expected)
                return true;
        }
        return false;
    }

    // A year in which the file's days fit.
    private int Nominal(bool mixed, bool leapDay)
    {
        int year = _stamps[0].Year;
        bool spans = _stamps.Any(s => s.Month == 2) && _stamps.Any(s => s.Month == 3);
        while (mixed && spans && DateTime.IsLeapYear(year) != leapDay)
            year++;
        return year;
    }
}
