using System.Globalization;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>A span without rows.</summary>
/// <param name="From">The row before it.</param>
/// <param name="To">The row after it.</param>
public sealed record WeatherGap(DateTimeOffset From, DateTimeOffset To)
{
    /// <summary>How long it is.</summary>
    public TimeSpan Length => To - From;
}

/// <summary>Looks at the spacing of a file's rows: nothing missing for longer than can be bridged.</summary>
internal sealed class WeatherGaps(TimeSpan longest)
{
    /// <summary>The longest time between two rows that a straight line may bridge unasked.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(3);

    // A spacing counts as a gap from here on, per usual spacing, so that a late reading is not one.
    private const double GapFactor = 1.5;
    private const int Told = 20;

    // How often each spacing occurs: the median without keeping them all.
    private readonly Dictionary<long, int> _spacings = [];
    private readonly List<(WeatherGap Gap, int Line)> _tooLong = [];

    /// <summary>Takes the next two neighbours.</summary>
    public void Between(DateTimeOffset before, DateTimeOffset after, int line)
    {
        TimeSpan spacing = after - before;
        _spacings[spacing.Ticks] = _spacings.GetValueOrDefault(spacing.Ticks) + 1;
        if (spacing > longest)
            _tooLong.Add((new WeatherGap(before, after), line));
    }

    /// <summary>Reports what is too long, and notes and gives what is bridged.</summary>
    public IReadOnlyList<WeatherGap> Check(IReadOnlyList<WeatherRow> rows, WeatherFaults faults)
    {
        foreach ((WeatherGap gap, int line) in _tooLong)
        {
            faults.Report(line, 1,
                $"nothing between {Text(gap.From)} and {Text(gap.To)}, {Hours(gap.Length)} h",
                $"accepted: at most {Hours(longest)} h between rows{(longest == Longest ? "" : ", as asked for")}");
        }
        if (rows.Count < 2)
            return [];
        TimeSpan usual = Usual();
        List<WeatherGap> bridged = [];
        for (int i = 1; i < rows.Count; i++)
        {
            TimeSpan spacing = rows[i].Time - rows[i - 1].Time;
            if (spacing <= longest && (spacing > usual * GapFactor || spacing > Longest))
                bridged.Add(new WeatherGap(rows[i - 1].Time, rows[i].Time));
        }
        foreach (WeatherGap gap in bridged.Take(Told))
        {
            string asked = gap.Length > Longest ? ", by a straight line, as asked for" : "";
            faults.Note($"{faults.File}: bridged {Hours(gap.Length)} h between {Text(gap.From)} and {Text(gap.To)}{asked}");
        }
        if (bridged.Count > Told)
        {
            double rest = bridged.Skip(Told).Sum(g => g.Length.TotalHours);
            faults.Note($"{faults.File}: bridged {bridged.Count - Told} more gaps, {rest:0.##} h in all");
        }
        return bridged;
    }

    // The median spacing.
    private TimeSpan Usual()
    {
        long count = 0;
        long half = _spacings.Values.Sum(n => (long)n) / 2;
        foreach ((long ticks, int times) in _spacings.OrderBy(s => s.Key))
        {
            count += times;
            if (count > half)
                return TimeSpan.FromTicks(ticks);
        }
        return TimeSpan.Zero;
    }

    internal static string Text(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture);

    internal static string Hours(TimeSpan span) => span.TotalHours.ToString("0.##", CultureInfo.InvariantCulture);
}
