using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Puts the hours into a block of a forecast that is longer than an hour, with the lowest and highest that are printed for it.</summary>
/// <remarks>
/// Air goes on straight lines from the block's beginning to its end. An extreme outside the two is put in the block's middle; of two, one at a third and one
/// at two thirds, in the order that the air falls or rises. Nothing in a forecast says when in its block an extreme is.
/// </remarks>
internal static class ForecastBlocks
{
    /// <summary>Longer blocks are gaps.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(12);

    /// <summary>Whether the time between two rows is a block to be put into hours.</summary>
    public static bool Is(in WeatherRow from, in WeatherRow to) => to.Time - from.Time is var length && length > TimeSpan.FromHours(1) && length <= Longest && length.Ticks % TimeSpan.TicksPerHour == 0;

    /// <summary>The hours between the two rows.</summary>
    /// <param name="from">The block's beginning.</param>
    /// <param name="to">The next block's beginning.</param>
    /// <param name="low_K">The lowest printed for the block; null where none is.</param>
    /// <param name="high_K">The highest.</param>
    public static IEnumerable<WeatherRow> Hours(WeatherRow from, WeatherRow to, double? low_K, double? high_K)
    {
        int hours = (int)(to.Time - from.Time).TotalHours;
        List<(int Hour, double Air_K)> knots = Knots(hours, from.Air_K, to.Air_K, low_K, high_K);
        int knot = 0;
        for (int hour = 1; hour < hours; hour++)
        {
            while (knots[knot + 1].Hour < hour)
                knot++;
            ((int at, double air_K), (int next, double nextAir_K)) = (knots[knot], knots[knot + 1]);
            double part = (double)hour / hours;
            yield return new WeatherRow(
                from.Time.AddHours(hour), air_K + ((nextAir_K - air_K) * (hour - at) / (next - at)), Between(from.Wind_m_s, to.Wind_m_s, part), Between(from.DewPoint_K, to.DewPoint_K, part),
                Between(from.Sun_W_m2, to.Sun_W_m2, part), Between(from.Cloud_frac, to.Cloud_frac, part), Between(from.Pressure_Pa, to.Pressure_Pa, part));
        }
    }

    private static List<(int Hour, double Air_K)> Knots(int hours, double from_K, double to_K, double? low_K, double? high_K)
    {
        List<double> extremes = [];
        if (low_K < Math.Min(from_K, to_K))
            extremes.Add(low_K.Value);
        if (high_K > Math.Max(from_K, to_K))
            extremes.Insert(to_K < from_K ? 0 : extremes.Count, high_K.Value);
        List<(int, double)> knots = [(0, from_K)];
        for (int i = 0; i < extremes.Count; i++)
        {
            int hour = (int)Math.Round((double)hours * (i + 1) / (extremes.Count + 1), MidpointRounding.AwayFromZero);
            if (hour > 0 && hour < hours && knots[^1].Item1 < hour)
                knots.Add((hour, extremes[i]));
        }

        knots.Add((hours, to_K));
        return knots;
    }

    private static double? Between(double? from, double? to, double part) => from + ((to - from) * part);
}
