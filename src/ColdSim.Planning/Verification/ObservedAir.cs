using ColdSim.Model.Weather;

namespace ColdSim.Planning.Verification;

/// <summary>Observed weather at any time, by straight lines between rows.</summary>
/// <param name="rows">In order of time.</param>
internal sealed class ObservedAir(IReadOnlyList<WeatherRow> rows)
{
    private int _after;

    /// <summary>Air and wind at a time; null outside the rows. Times may be asked in any order, and go fast in order.</summary>
    public (double Air_K, double? Wind_m_s)? At(DateTimeOffset time)
    {
        if (rows.Count == 0 || time < rows[0].Time || time > rows[^1].Time)
            return null;
        if (_after > 0 && rows[_after - 1].Time > time)
            _after = 0;
        while (rows[_after].Time < time)
            _after++;
        WeatherRow after = rows[_after];
        if (after.Time == time)
            return (after.Air_K, after.Wind_m_s);
        WeatherRow before = rows[_after - 1];
        double part = (time - before.Time) / (after.Time - before.Time);
        return (before.Air_K + (part * (after.Air_K - before.Air_K)), before.Wind_m_s + (part * (after.Wind_m_s - before.Wind_m_s)));
    }
}
