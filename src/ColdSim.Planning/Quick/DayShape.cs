using ColdSim.Model.Weather;

namespace ColdSim.Planning.Quick;

/// <summary>A day of a forecast as people read it.</summary>
/// <param name="Date">The day.</param>
/// <param name="Low_K">The low of its morning. [K]</param>
/// <param name="High_K">The high of its afternoon. [K]</param>
/// <param name="Wind_m_s">Wind all day; null where it is not given. [m/s]</param>
/// <param name="Cloud_frac">Cloud all day; null where it is not given.</param>
public sealed record WeatherDay(DateOnly Date, double Low_K, double High_K, double? Wind_m_s = null, double? Cloud_frac = null);

/// <summary>Hourly weather from the lows and highs of days in a row.</summary>
/// <remarks>
/// Half a cosine from each low at 07:00 up to the high at 15:00 and down again to the next morning's low, as <see cref="NightShape"/> has it for
/// one night. Wind and cloud are the same all day.
/// </remarks>
public static class DayShape
{
    private const int High_h = 15;
    private const int Low_h = 7;

    /// <summary>Rows from midnight before the first day to noon of the last.</summary>
    /// <param name="days">Two or more, one date after the other.</param>
    /// <param name="offset">Of the place's clock.</param>
    public static IReadOnlyList<WeatherRow> Rows(IReadOnlyList<WeatherDay> days, TimeSpan offset)
    {
        ArgumentNullException.ThrowIfNull(days);
        ArgumentOutOfRangeException.ThrowIfLessThan(days.Count, 2);
        DateTimeOffset first = new(days[0].Date.ToDateTime(TimeOnly.MinValue), offset);
        int hours = (24 * (days.Count - 1)) + 12;
        List<WeatherRow> rows = new(hours + 1);
        for (int h = 0; h <= hours; h++)
        {
            int day = h / 24, clock_h = h % 24;
            WeatherDay low = clock_h >= High_h ? days[day + 1] : days[day], high = clock_h < Low_h ? days[Math.Max(0, day - 1)] : days[day];
            rows.Add(new(first.AddHours(h), NightShape.Air_K(clock_h, low.Low_K, high.High_K), days[day].Wind_m_s, Cloud_frac: days[day].Cloud_frac));
        }

        return rows;
    }
}
