using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>The low of one night of a forecast, which may begin in it.</summary>
/// <param name="Evening">The calendar day on whose evening it begins.</param>
/// <param name="Low_K">Lowest air temperature. [K]</param>
/// <param name="LowAt">When that is, by the clock of the rows.</param>
/// <param name="Wind_m_s">Mean wind of its hours; null where no wind is given. [m/s]</param>
internal sealed record NightLow(DateOnly Evening, double Low_K, DateTimeOffset LowAt, double? Wind_m_s);

/// <summary>The lows of the nights of a forecast, from noon to noon by the clock of the rows.</summary>
internal static class NightLows
{
    private const int Noon = 12;

    // The low of a clear night is about sunrise; a night of which the forecast ends before is left out.
    private const int Morning = 8;

    /// <summary>Every night that the rows reach the morning of, in order of time.</summary>
    /// <param name="rows">In order of time.</param>
    public static IReadOnlyList<NightLow> Of(IReadOnlyList<WeatherRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        List<NightLow> lows = [];
        int from = 0;
        for (int i = 1; i <= rows.Count; i++)
        {
            if (i < rows.Count && Evening(rows[i]) == Evening(rows[from]))
                continue;
            if (Low(rows, from, i) is { } low)
                lows.Add(low);
            from = i;
        }

        return lows;
    }

    private static DateOnly Evening(in WeatherRow row) => DateOnly.FromDateTime(row.Time.DateTime.AddHours(-Noon));

    private static NightLow? Low(IReadOnlyList<WeatherRow> rows, int from, int to)
    {
        DateOnly evening = Evening(rows[from]);
        DateTime morning = evening.AddDays(1).ToDateTime(new TimeOnly(Morning, 0));
        if (rows[from].Time.DateTime > morning || rows[to - 1].Time.DateTime < morning)
            return null;
        (WeatherRow lowest, double wind, int winds) = (rows[from], 0, 0);
        for (int i = from; i < to; i++)
        {
            if (rows[i].Air_K < lowest.Air_K)
                lowest = rows[i];
            if (rows[i].Wind_m_s is not { } one)
                continue;
            wind += one;
            winds++;
        }

        return new(evening, lowest.Air_K, lowest.Time, winds == 0 ? null : wind / winds);
    }
}
