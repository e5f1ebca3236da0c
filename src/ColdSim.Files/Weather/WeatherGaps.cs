using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>Looks at the times of a file's rows: strictly ascending, and nothing missing for longer than can be bridged.</summary>
internal static class WeatherGaps
{
    /// <summary>The longest time between two rows that a straight line may bridge.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(3);

    // A spacing counts as a gap from here on, per usual spacing, so that a late reading is not one.
    private const double GapFactor = 1.5;

    /// <summary>Reports gaps; the times are in order.</summary>
    public static void Check(IReadOnlyList<(DateTimeOffset Time, int Line)> times, WeatherFaults faults)
    {
        if (times.Count < 2)
            return;
        TimeSpan usual = Usual(times);
        for (int i = 1; i < times.Count; i++)
        {
            TimeSpan spacing = times[i].Time - times[i - 1].Time;
            if (spacing > Longest)
            {
                faults.Report(times[i].Line, 1,
                    $"nothing between {Text(times[i - 1].Time)} and {Text(times[i].Time)}, {Hours(spacing)} h",
                    $"accepted: at most {Hours(Longest)} h between rows");
            }
            else if (spacing > usual * GapFactor)
            {
                faults.Note($"{faults.File}: bridged {Hours(spacing)} h between {Text(times[i - 1].Time)} and {Text(times[i].Time)}");
            }
        }
    }

    // The median spacing.
    private static TimeSpan Usual(IReadOnlyList<(DateTimeOffset Time, int Line)> times)
    {
        long[] ticks = new long[times.Count - 1];
        for (int i = 0; i < ticks.Length; i++)
            ticks[i] = (times[i + 1].Time - times[i].Time).Ticks;
        Array.Sort(ticks);
        return TimeSpan.FromTicks(ticks[ticks.Length / 2]);
    }

    internal static string Text(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture);

    private static string Hours(TimeSpan span) => span.TotalHours.ToString("0.##", CultureInfo.InvariantCulture);
}
