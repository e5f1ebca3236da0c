using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace ColdSim.Planning.Logs;

/// <summary>How a reading compares with the simulator.</summary>
public enum ReadingMark
{
    /// <summary>Within what the errors let expect, or nothing to compare it with.</summary>
    None,

    /// <summary>Far off, and so is nothing that would put it down to one reading.</summary>
    Far,

    /// <summary>Far off one way and the next one far off the other way: this reading looks wrong.</summary>
    LooksWrong,

    /// <summary>Far off because the reading before looks wrong.</summary>
    AfterWrong,
}

/// <summary>A reading beside what the simulator makes of the reading before.</summary>
/// <param name="Row">The reading.</param>
/// <param name="Predicted">What the simulator, started from the reading before, has in the cylinder; null for a first reading, after a filling and outside the weather.</param>
/// <param name="Times">The reading less that, in standard errors of the difference.</param>
/// <param name="Mark">What that says of the reading.</param>
public sealed record PredictedRow(LogRow Row, Mass? Predicted, double? Times, ReadingMark Mark)
{
    /// <summary>The reading less the prediction.</summary>
    public Mass? Off => Predicted is { } predicted ? Row.Contents.Mass - predicted : null;
}

/// <summary>What was used on one day, as far as readings cover it, beside what the simulator would have used.</summary>
/// <param name="Day">The day, midnight to midnight by the scenario's clock.</param>
/// <param name="Covered">How much of it lies between readings.</param>
/// <param name="Used">What was used; between two readings it is shared out over the hours as the simulator has it.</param>
/// <param name="UsedUncertainty">Its standard uncertainty, from the readings.</param>
/// <param name="Predicted">What the simulator used in the same hours.</param>
public sealed record UseOfDay(DateOnly Day, Duration Covered, Mass Used, Mass UsedUncertainty, Mass Predicted);

/// <summary>A log beside the simulator: reading by reading from the one before, and day by day.</summary>
public sealed class LogPrediction
{
    /// <summary>Beyond so many standard errors a reading is marked.</summary>
    public const double FarOff = 3;

    /// <summary>Standard deviation of one day's use about the model, as a fraction of it.</summary>
    public const double Day_frac = 0.04;

    /// <summary>The same of all days together.</summary>
    public const double Lasting_frac = 0.06;

    internal LogPrediction(IReadOnlyList<PredictedRow> rows, IReadOnlyList<UseOfDay> days) => (Rows, Days) = (rows, days);

    /// <summary>The log.</summary>
    internal UseLog Log { get; init; } = UseLog.Empty;

    /// <summary>The readings in order of time.</summary>
    public IReadOnlyList<PredictedRow> Rows { get; }

    /// <summary>The days that readings cover, in order.</summary>
    public IReadOnlyList<UseOfDay> Days { get; }

    /// <summary>What was used on all of them.</summary>
    public Mass Used => Mass.FromKilograms(Days.Sum(d => d.Used.Kilograms));

    /// <summary>What the simulator used in the same hours.</summary>
    public Mass Predicted => Mass.FromKilograms(Days.Sum(d => d.Predicted.Kilograms));

    /// <summary>How many intervals there are to run, for showing progress.</summary>
    public static int IntervalsOf(Scenario scenario, UseLog log)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        return Math.Max(0, Stops(scenario, log).Length - 1);
    }

    /// <summary>Runs the simulator from reading to reading, at the parameters that the scenario carries.</summary>
    /// <param name="scenario">The scenario; its own contents count only for cylinders that were never read.</param>
    /// <param name="log">Its log.</param>
    /// <param name="finished">Receives the number of intervals that are done.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <remarks>
    /// At each reading the cylinder is set to what was read, while the coach goes on as warm as it was: an error of one reading does not
    /// run through all that follow.
    /// </remarks>
    public static LogPrediction Of(Scenario scenario, UseLog log, IProgress<int>? finished = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        DateTimeOffset[] stops = Stops(scenario, log);
        Interval[] intervals = new Interval[Math.Max(0, stops.Length - 1)];
        LogReplay replay = new(scenario);
        FeedHistory? feeds = LogFeeds.Of(scenario, log, cancel);
        for (int k = 0; k < intervals.Length; k++)
        {
            replay.Use(InUse(feeds, stops[k], stops[k + 1]));
            foreach (LogRow row in log.Rows.Where(r => r.Reading.Time == stops[k]))
                replay.Set(row.Reading.Cylinder, row.Contents.Mass_kg);
            intervals[k] = replay.Run(stops[k], stops[k + 1], cancel);
            finished?.Report(k + 1);
        }

        PredictedRow[] rows = [.. log.Rows.Select(r => Row(r, log, intervals, feeds))];
        return new LogPrediction(Marked(rows), DaysOf(scenario, log, intervals)) { Log = log };
    }

    // Where it was changed between two readings, from the middle on the other one.
    private static int? InUse(FeedHistory? feeds, DateTimeOffset from, DateTimeOffset to)
    {
        if (feeds is null || feeds.Together || feeds.Gaps.FirstOrDefault(g => g.From <= from && g.To >= to) is not { } gap)
            return null;
        return gap.RanDry || from - gap.From < (gap.To - gap.From) / 2 ? gap.First : gap.Last;
    }

    internal sealed record Interval(DateTimeOffset From, DateTimeOffset To, double[]? Used_kg, double Cycle_kg);

    // Readings, midnights and changes of place between the first reading and the last.
    private static DateTimeOffset[] Stops(Scenario scenario, UseLog log)
    {
        if (log.Rows.Count == 0)
            return [];
        DateTimeOffset first = log.Rows[0].Reading.Time, last = log.Rows[^1].Reading.Time;
        List<DateTimeOffset> stops = [.. log.Rows.Select(r => r.Reading.Time), .. scenario.Legs.Select(l => l.From).Where(t => t > first && t < last)];
        DateTimeOffset local = first.ToOffset(scenario.Start.Offset);
        for (DateTimeOffset midnight = new DateTimeOffset(local.Date, local.Offset).AddDays(1); midnight < last; midnight = midnight.AddDays(1))
            stops.Add(midnight);
        return [.. stops.Distinct().Order()];
    }

    private static IEnumerable<Interval> Between(LogRow before, LogRow row, Interval[] intervals)
        => intervals.Where(s => s.From >= before.Reading.Time && s.To <= row.Reading.Time);

    private static LogRow? Before(LogRow row, UseLog log)
        => row.Used is null ? null : log.Rows.TakeWhile(r => r != row).LastOrDefault(r => r.Reading.Cylinder == row.Reading.Cylinder);

    private static PredictedRow Row(LogRow row, UseLog log, Interval[] intervals, FeedHistory? feeds)
    {
        if (Before(row, log) is not { } before || Between(before, row, intervals).Any(s => s.Used_kg is null))
            return new(row, null, null, ReadingMark.None);
        int c = row.Reading.Cylinder;
        double used_kg = Between(before, row, intervals).Sum(s => s.Used_kg![c]);
        double cycle_kg = Between(before, row, intervals).Select(s => s.Cycle_kg).DefaultIfEmpty().Max();
        double days = Math.Max((row.Reading.Time - before.Reading.Time).TotalDays, 1.0 / 1440);

        // As a fit takes them: half a burner cycle at each end, what a day brings, and what the model always gets wrong.
        double variance = Math.Pow(row.UsedUncertainty!.Value.Kilograms, 2) + 0.5 * cycle_kg * cycle_kg
            + used_kg * used_kg * (Day_frac * Day_frac / days + Lasting_frac * Lasting_frac) + DividedVariance(before, row, intervals, feeds);
        double predicted_kg = before.Contents.Mass_kg - used_kg;
        return new(row, Mass.FromKilograms(predicted_kg), (row.Contents.Mass_kg - predicted_kg) / Math.Sqrt(variance), ReadingMark.None);
    }

    // Variance of what one of two cylinders gave, where nothing but their sum is known.
    private static double DividedVariance(LogRow before, LogRow row, Interval[] intervals, FeedHistory? feeds)
    {
        double sum = 0;
        foreach (FeedGap gap in feeds?.Gaps ?? [])
        {
            if (gap.From < before.Reading.Time || gap.To > row.Reading.Time)
                continue;
            double all_kg = intervals.Where(s => s.From >= gap.From && s.To <= gap.To).Sum(s => s.Used_kg!.Sum());
            int c = row.Reading.Cylinder;
            if (feeds!.Together)
                sum += Math.Pow(FeedTracker.Share_frac * all_kg, 2);
            else if (gap.Other is { } other && (c == gap.First || c == other))
                sum += Math.Pow(FeedTracker.Divided_frac * all_kg, 2);
        }

        return sum;
    }

    private static PredictedRow[] Marked(PredictedRow[] rows)
    {
        for (int i = 0; i < rows.Length; i++)
        {
            if (rows[i].Mark != ReadingMark.None || rows[i].Times is not { } times || Math.Abs(times) <= FarOff)
                continue;
            int next = Array.FindIndex(rows, i + 1, r => r.Row.Reading.Cylinder == rows[i].Row.Reading.Cylinder);
            bool back = next >= 0 && rows[next].Times is { } after && Math.Abs(after) > FarOff && after * times < 0;
            rows[i] = rows[i] with { Mark = back ? ReadingMark.LooksWrong : ReadingMark.Far };
            if (back)
                rows[next] = rows[next] with { Mark = ReadingMark.AfterWrong };
        }

        return rows;
    }

    private static List<UseOfDay> DaysOf(Scenario scenario, UseLog log, Interval[] intervals)
    {
        Matrix<double> covariance = log.Covariance();
        SortedDictionary<DateOnly, Sum> days = [];
        HashSet<Interval> covered = [];
        for (int i = 0; i < log.Rows.Count; i++)
        {
            LogRow row = log.Rows[i];
            if (Before(row, log) is not { } before || Between(before, row, intervals).Any(s => s.Used_kg is null))
                continue;
            int c = row.Reading.Cylinder, j = IndexOf(log, before);
            double all_kg = Between(before, row, intervals).Sum(s => s.Used_kg![c]);
            double all_s = (row.Reading.Time - before.Reading.Time).TotalSeconds;
            foreach (Interval s in Between(before, row, intervals))
            {
                DateOnly day = DateOnly.FromDateTime(s.From.ToOffset(scenario.Start.Offset).Date);
                if (!days.TryGetValue(day, out Sum? sum))
                    days.Add(day, sum = new Sum(log.Rows.Count));
                double part = all_kg > 0.001 ? s.Used_kg![c] / all_kg : (s.To - s.From).TotalSeconds / all_s;
                sum.Used_kg += part * row.Used!.Value.Kilograms;
                sum.Predicted_kg += s.Used_kg![c];
                sum.Parts[j] += part;
                sum.Parts[i] -= part;
                if (covered.Add(s))
                    sum.Covered_s += (s.To - s.From).TotalSeconds;
            }
        }

        return [.. days.Select(d => new UseOfDay(
            d.Key, Duration.FromSeconds(d.Value.Covered_s), Mass.FromKilograms(d.Value.Used_kg),
            Mass.FromKilograms(Math.Sqrt(Math.Max(0, d.Value.Parts * (covariance * d.Value.Parts)))), Mass.FromKilograms(d.Value.Predicted_kg)))];
    }

    private static int IndexOf(UseLog log, LogRow row)
    {
        for (int i = 0; i < log.Rows.Count; i++)
        {
            if (ReferenceEquals(log.Rows[i], row))
                return i;
        }

        return -1;
    }

    private sealed class Sum(int rows)
    {
        public double Used_kg { get; set; }

        public double Predicted_kg { get; set; }

        public double Covered_s { get; set; }

        public Vector<double> Parts { get; } = Vector<double>.Build.Dense(rows);
    }
}
