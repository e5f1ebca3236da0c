using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>The whole nights of a record, row by row; it holds a record a night.</summary>
/// <param name="clock">The offset of the clock that noon is read from.</param>
internal sealed class RunningNights(TimeSpan clock)
{
    private const int Noon = 12;

    private readonly List<ColdNight> _nights = [];
    private int _rows;
    private WeatherRow _before;
    private DateTimeOffset _from;
    private int? _first;
    private double _sum;
    private (double Air_K, DateTimeOffset At) _low;

    /// <summary>The nights that are over, in order of time.</summary>
    public IReadOnlyList<ColdNight> Nights => _nights;

    /// <summary>Takes the next row.</summary>
    public void Add(in WeatherRow row)
    {
        if (_rows == 0)
        {
            DateTimeOffset first = row.Time.ToOffset(clock), noon = new(first.Date.AddHours(Noon), clock);
            _from = noon < first ? noon.AddDays(1) : noon;
        }
        else
        {
            Between(row);
        }

        _before = row;
        _rows++;
    }

    private void Between(in WeatherRow row)
    {
        DateTimeOffset time = _before.Time;
        while (time < row.Time)
        {
            if (_first is null)
            {
                if (row.Time <= _from)
                    return;
                Begin();
                time = _from;
            }

            DateTimeOffset to = _from.AddDays(1), end = row.Time < to ? row.Time : to;
            double a = AirCurve.Interpolate_K(_before, row, time), b = AirCurve.Interpolate_K(_before, row, end);
            _sum += (a + b) / 2 * (end - time).TotalHours;
            _low = a < _low.Air_K ? (a, time) : _low;
            _low = b < _low.Air_K ? (b, end) : _low;
            if (end == to)
                End(to);
            time = end;
        }
    }

    private void Begin() => (_first, _sum, _low) = (_rows - 1, 0, (double.PositiveInfinity, _from));

    private void End(DateTimeOffset to)
    {
        _nights.Add(new ColdNight(_from, to, _sum / (to - _from).TotalHours, _low.Air_K, _low.At.ToOffset(_from.Offset), _first!.Value, _rows));
        (_from, _first) = (to, null);
    }
}
