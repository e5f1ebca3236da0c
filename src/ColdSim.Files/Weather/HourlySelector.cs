using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>
/// Selects one report an hour from the many of a station: the routine one before synoptic ones and specials, then the one nearest the full
/// hour. It keeps its own time.
/// </summary>
internal sealed class HourlySelector(RowCollector rows, WeatherFaults faults)
{
    private (WeatherRow Row, int Rank, int Line, long Hour)? _best;
    private DateTimeOffset _last = DateTimeOffset.MinValue;
    private int _notSelected;

    /// <summary>Adds a report with a temperature.</summary>
    /// <param name="row">The report.</param>
    /// <param name="rank">0 for a routine report; the lowest rank of an hour is selected.</param>
    /// <param name="line">Its line.</param>
    public void Add(in WeatherRow row, int rank, int line)
    {
        if (row.Time < _last)
        {
            faults.Report(line, 1, $"{InstantText.Of(row.Time)} comes after {InstantText.Of(_last)}", "accepted: rows in order of time");
            return;
        }
        _last = row.Time;
        long hour = (row.Time.UtcTicks + TimeSpan.TicksPerHour / 2) / TimeSpan.TicksPerHour;
        if (_best is { } best && best.Hour == hour)
        {
            _notSelected++;
            if (rank < best.Rank || (rank == best.Rank && FromFullHour(row, hour) < FromFullHour(best.Row, hour)))
                _best = (row, rank, line, hour);
            return;
        }
        PassOn();
        _best = (row, rank, line, hour);
    }

    /// <summary>Passes on the last hour's report and notes how many were not selected.</summary>
    public void Finish()
    {
        PassOn();
        if (_notSelected > 0)
            faults.Note($"{faults.File}: {_notSelected} further reports within an hour passed over; the routine one, then the one nearest the full hour, is used");
    }

    private void PassOn()
    {
        if (_best is { } best)
            rows.Add(best.Row, best.Line);
        _best = null;
    }

    private static long FromFullHour(in WeatherRow row, long hour) => Math.Abs(row.Time.UtcTicks - hour * TimeSpan.TicksPerHour);
}
