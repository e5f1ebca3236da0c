using System.Globalization;

namespace ColdSim.Files.Weather;

/// <summary>A span without rows.</summary>
/// <param name="From">The time of the row before it.</param>
/// <param name="To">The time of the row after it.</param>
public sealed record WeatherGap(DateTimeOffset From, DateTimeOffset To)
{
    /// <summary>How long it is.</summary>
    public TimeSpan Length => To - From;
}

/// <summary>Finds the gaps between a file's rows: which are bridged, and which are too long for that.</summary>
/// <remarks>Which spacing is usual is known only at the end, so the longest are kept until then and the rest are counted.</remarks>
internal sealed class WeatherGaps(TimeSpan longest)
{
    /// <summary>The longest time between two rows that a straight line bridges by default.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(3);

    // A spacing counts as a gap from here on, per usual spacing, so that a late reading is not one.
    private const double GapFactor = 1.5;
    private const int Listed = 20;
    private const int Kept = 1000;

    // Below this, spacings are distinguished by the millisecond, from here on by the second, so that the table of them stays small.
    private static readonly TimeSpan Fine = TimeSpan.FromSeconds(10);

    // How often each spacing occurs, so that the median is found without keeping them all.
    private readonly Dictionary<long, long> _spacings = [];
    private readonly PriorityQueue<WeatherGap, WeatherGap> _long = new(Comparer<WeatherGap>.Create(ByRank));
    private readonly List<(WeatherGap Gap, int Line)> _tooLong = [];
    private (int Count, int Line) _more;
    private long _count;

    /// <summary>Adds the spacing of the next two rows.</summary>
    public void Between(DateTimeOffset before, DateTimeOffset after, int line)
    {
        TimeSpan spacing = after - before;
        long ticks = Rounded(spacing);
        _spacings[ticks] = (_spacings.TryGetValue(ticks, out long times) ? times : 0) + 1;
        _count++;
        if (spacing <= longest)
            Keep(before, after);
        else if (_tooLong.Count < Listed)
            _tooLong.Add((new WeatherGap(before, after), line));
        else
            _more = (_more.Count + 1, line);
    }

    /// <summary>Reports gaps that are too long, notes those that are bridged, and returns the longest of these and how many there are.</summary>
    public (IReadOnlyList<WeatherGap> Longest, long All) Check(WeatherFaults faults)
    {
        foreach ((WeatherGap gap, int line) in _tooLong)
        {
            faults.Report(line, 1,
                $"nothing between {InstantText.Of(gap.From)} and {InstantText.Of(gap.To)}, {Hours(gap.Length)} h",
                $"accepted: at most {Hours(longest)} h between rows{(longest == Longest ? "" : ", as asked for")}; --bridge \"{Math.Ceiling(gap.Length.TotalHours):0} h\", or bridge under [weather], puts a straight line over it");
        }

        for (int i = 0; i < _more.Count; i++)
            faults.Report(_more.Line, 1, "a further gap that is too long");
        if (_spacings.Count == 0)
            return ([], 0);
        long[] spacings = new long[_spacings.Count];
        _spacings.Keys.CopyTo(spacings, 0);
        Array.Sort(spacings);
        TimeSpan usual = Usual(spacings);
        bool IsGap(TimeSpan spacing) => spacing <= longest && (spacing > usual * GapFactor || spacing > Longest);
        long all = 0;
        double all_h = 0;
        foreach (long ticks in spacings)
        {
            TimeSpan spacing = TimeSpan.FromTicks(ticks);
            if (!IsGap(spacing))
                continue;
            all += _spacings[ticks];
            all_h += spacing.TotalHours * _spacings[ticks];
        }

        List<WeatherGap> bridged = [];
        foreach ((WeatherGap gap, _) in _long.UnorderedItems)
        {
            if (IsGap(TimeSpan.FromTicks(Rounded(gap.Length))))
                bridged.Add(gap);
        }

        bridged.Sort((a, b) => a.From.CompareTo(b.From));
        foreach (WeatherGap gap in bridged.Take(Listed))
        {
            string asked = gap.Length > Longest ? ", by a straight line, as asked for" : "";
            faults.Note($"{faults.File}: bridged {Hours(gap.Length)} h between {InstantText.Of(gap.From)} and {InstantText.Of(gap.To)}{asked}");
        }

        if (all > Listed)
        {
            double rest = all_h - bridged.Take(Listed).Sum(g => g.Length.TotalHours);
            faults.Note($"{faults.File}: bridged {all - Listed} more gaps, {rest:0.##} h in all");
        }

        return (bridged, all);
    }

    // Of gaps of the same length the earliest are kept.
    private void Keep(DateTimeOffset from, DateTimeOffset to)
    {
        if (_long.Count == Kept && to - from <= _long.Peek().Length)
            return;
        WeatherGap gap = new(from, to);
        if (_long.Count < Kept)
            _long.Enqueue(gap, gap);
        else
            _long.EnqueueDequeue(gap, gap);
    }

    // The shorter first, of the same length the later, so that these go first.
    private static int ByRank(WeatherGap a, WeatherGap b)
    {
        int byLength = a.Length.CompareTo(b.Length);
        return byLength != 0 ? byLength : b.From.CompareTo(a.From);
    }

    private static long Rounded(TimeSpan spacing)
    {
        long by = spacing < Fine ? TimeSpan.TicksPerMillisecond : TimeSpan.TicksPerSecond;
        return (spacing.Ticks + by / 2) / by * by;
    }

    // The median spacing of those in ascending order.
    private TimeSpan Usual(long[] spacings)
    {
        long count = 0;
        foreach (long ticks in spacings)
        {
            count += _spacings[ticks];
            if (count > _count / 2)
                return TimeSpan.FromTicks(ticks);
        }

        return TimeSpan.Zero;
    }

    internal static string Hours(TimeSpan span) => span.TotalHours.ToString("0.##", CultureInfo.InvariantCulture);
}
