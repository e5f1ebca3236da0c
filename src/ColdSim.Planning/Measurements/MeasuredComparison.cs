using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Measurements;

/// <summary>The measured values of a log beside what was computed, the one place that tables, pictures and documents take them from.</summary>
internal sealed class MeasuredComparison
{
    private MeasuredComparison(IReadOnlyList<MeasuredRow> rows) => (Rows, Groups) = (rows, MeasuredGroup.Of(rows));

    /// <summary>The values in order of time.</summary>
    public IReadOnlyList<MeasuredRow> Rows { get; }

    /// <summary>What the compared ones come to, by cause and quantity.</summary>
    public IReadOnlyList<MeasuredGroup> Groups { get; }

    /// <summary>The values beside a run, as far as they lie in its time; what its pictures show.</summary>
    /// <param name="run">The run, whose scenario has the values.</param>
    public static MeasuredComparison InRun(RunReport run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return new(RowsOf(run.Scenario, m => IsIn(run, m), means => means.Add(run.Series, run.Scenario.Start)));
    }

    /// <summary>The values beside the simulator taken through the log's time: each cylinder is set to what was read, and the coach goes on as warm as it was.</summary>
    /// <param name="scenario">The scenario as it is written, with the values.</param>
    /// <param name="log">The readings of contents; the run begins at the first of them, or at the scenario's start for values before it.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static MeasuredComparison ThroughLog(Scenario scenario, UseLog log, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        return new(RowsOf(scenario, _ => true, means => Replay(scenario, log, means, cancel)));
    }

    /// <summary>All values of a log: those in a run's time beside the run, the others beside the simulator taken through the log's time.</summary>
    /// <param name="run">The run, which starts from the log's latest reading of contents.</param>
    /// <param name="before">The comparison through the log's time.</param>
    public static MeasuredComparison Of(RunReport run, MeasuredComparison before)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(before);
        return new([.. before.Rows.Where(r => !IsIn(run, r.Measurement)).Concat(InRun(run).Rows).OrderBy(r => r.Measurement.Time).ThenBy(r => r.Measurement.Line)]);
    }

    /// <summary>The values in a run's time that lie beside a curve of its pictures, in order of time: those of a cylinder only while it is the one in use.</summary>
    /// <param name="run">The run, whose scenario has the values.</param>
    public static IEnumerable<Measurement> Drawn(RunReport run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return InOrder(run.Scenario.Measurements.Where(m => IsIn(run, m) && (m.Cylinder is not { } cylinder || run.Series.InUse[MinuteOf(run, m)] == cylinder)));
    }

    /// <summary>The sample of a run that is nearest to a value.</summary>
    /// <param name="run">The run.</param>
    /// <param name="measured">A value in its time.</param>
    public static int MinuteOf(RunReport run, Measurement measured)
        => (int)Math.Round((measured.Time - run.Scenario.Start).TotalSeconds / RunSeries.Spacing_s);

    private static IEnumerable<Measurement> InOrder(IEnumerable<Measurement> measured) => measured.OrderBy(m => m.Time).ThenBy(m => m.Line);

    private static bool IsIn(RunReport run, Measurement measured)
        => measured.Time >= run.Scenario.Start && measured.Time <= run.Scenario.Start.AddSeconds((run.Series.Count - 1) * RunSeries.Spacing_s);

    private static IReadOnlyList<MeasuredRow> RowsOf(Scenario scenario, Func<Measurement, bool> which, Action<ComputedMeans> gather)
    {
        Measurement[] measured = [.. InOrder(scenario.Measurements.Where(which))];
        if (measured.Length == 0)
            return [];
        ComputedMeans means = new(measured, scenario.Rig);
        gather(means);
        return [.. measured.Select((m, i) => MeasuredRow.Of(m, means.At(i), scenario.Rig))];
    }

    private static void Replay(Scenario scenario, UseLog log, ComputedMeans means, CancellationToken cancel)
    {
        // A furnace that is said to stop does so in the log's time too.
        Scenario replayed = scenario.HeatStops is null ? scenario : scenario with { Legs = NightRun.LegsOf(scenario) };
        DateTimeOffset[] stops = Stops(replayed, log);
        LogReplay replay = new(replayed);
        Rig rig = scenario.Rig;
        for (int k = 0; k + 1 < stops.Length; k++)
        {
            foreach (LogRow row in log.Rows.Where(r => r.Reading.Time == stops[k]))
                replay.Set(row.Reading.Cylinder, row.Contents.Mass_kg);
            RunSeries series = new(
                (stops[k + 1] - stops[k]).TotalSeconds, rig.Cylinders.Count, rig.GasPlaces, rig.Nodes().Count, rig.Gas.IsMixed, rig.Power is not null);
            replay.Run(stops[k], stops[k + 1], cancel, new SeriesRecorder(series));
            means.Add(series, stops[k]);
        }
    }

    // Readings of contents and changes of place, from where something is known to the last value.
    private static DateTimeOffset[] Stops(Scenario scenario, UseLog log)
    {
        DateTimeOffset first = scenario.Measurements.Min(m => m.Time), last = scenario.Measurements.Max(m => m.Time) + ComputedValue.HalfWindow;
        DateTimeOffset begin = log.Rows.Count == 0 || (first < log.Rows[0].Reading.Time && scenario.Start < log.Rows[0].Reading.Time)
            ? scenario.Start : log.Rows[0].Reading.Time;
        if (scenario.Legs.Count == 0 && last > scenario.Weather.Last)
            last = scenario.Weather.Last;
        DateTimeOffset[] stops = [begin, .. log.Rows.Select(r => r.Reading.Time), .. scenario.Legs.Select(l => l.From), last];
        return [.. stops.Where(t => t >= begin && t <= last).Distinct().Order()];
    }
}
