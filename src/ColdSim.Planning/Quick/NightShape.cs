using ColdSim.Model.Weather;

namespace ColdSim.Planning.Quick;

/// <summary>A night's air temperature from its afternoon high and its morning low.</summary>
/// <remarks>
/// Half a cosine down from the high at 15:00 to the low at 07:00, half a cosine up again to the same high at 15:00. Real nights
/// fall faster after sunset and lie flatter before dawn; this shape is between a clear night and a cloudy one.
/// </remarks>
public static class NightShape
{
    private const double High_h = 15;
    private const double Low_h = 7;
    private const double Day_h = 24;
    private const double Falling_h = Day_h - High_h + Low_h;
    private const double Rising_h = Day_h - Falling_h;

    /// <summary>Air temperature at a clock time. [K]</summary>
    /// <param name="clock_h">Hours after midnight.</param>
    /// <param name="low_K">The low. [K]</param>
    /// <param name="high_K">The high. [K]</param>
    public static double Air_K(double clock_h, double low_K, double high_K)
    {
        double sinceHigh_h = (clock_h - High_h + Day_h) % Day_h;
        double part = sinceHigh_h < Falling_h
            ? sinceHigh_h / Falling_h
            : 1 - (sinceHigh_h - Falling_h) / Rising_h;
        return low_K + (high_K - low_K) * (1 + Math.Cos(Math.PI * part)) / 2;
    }

    /// <summary>Hourly rows from noon to an hour after the next noon.</summary>
    /// <param name="noon">Noon before the night.</param>
    /// <param name="low_K">The low. [K]</param>
    /// <param name="high_K">The high. [K]</param>
    public static IReadOnlyList<WeatherRow> Rows(DateTimeOffset noon, double low_K, double high_K)
        => [.. Enumerable.Range(0, (int)Day_h + 2).Select(h =>
            new WeatherRow(noon.AddHours(h), Air_K((noon.TimeOfDay.TotalHours + h) % Day_h, low_K, high_K)))];
}
