using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>
/// One report an hour from a station's many: the routine one before synoptic ones and specials, then the one nearest the full hour.
/// It keeps its own time.
/// </summary>
internal sealed class HourlyPick(RowCollector rows, WeatherFaults faults)
{
    private (WeatherRow Row, int Rank, int Line, long Hour)? _best;
    private DateTimeOffset _last = DateTimeOffset.MinValue;
    private int _passed;

    /// <summary>Takes a report with a temperature.</summary>
    /// <param name="row">The report.</param>
    /// <param name="rank">0 for routine, more for less wanted.</param>
    /// <param name="line">Where it stands.</param>
    public void Add(in WeatherRow row, int rank, int line)
    {
        if (row.Time < _last)
        {
            faults.Report(line, 1, $"{WeatherGaps.Text(row.Time)} comes after {WeatherGaps.Text(_last)}", "accepted: rows in order of time");
            return;
        }
        _last = row.Time;
        long hour = (row.Time.UtcTicks + TimeSpan.TicksPerHour / 2) / TimeSpan.TicksPerHour;
        if (_best is { } best && best.Hour == hour)
        {
            _passed++;
            if (rank < best.Rank || (rank == best.Rank && Off(row, hour) < Off(best.Row, hour)))
                _best = (row, rank, line, hour);
            return;
        }
        Hand();
        _best = (row, rank, line, hour);
    }

    /// <summary>Hands on the last hour's and notes how many were passed over.</summary>
    public void Finish()
    {
        Hand();
        if (_passed > 0)
            faults.Note($"{faults.File}: {_passed} further reports within an hour passed over; the routine one, then the one nearest the full hour, is taken");
    }

    private void Hand()
    {
        if (_best is { } best)
            rows.Add(best.Row, best.Line);
        _best = null;
    }

    private static long Off(in WeatherRow row, long hour) => Math.Abs(row.Time.UtcTicks - hour * TimeSpan.TicksPerHour);
}
