using System.Runtime.ExceptionServices;

namespace ColdSim.Planning.Limits;

/// <summary>For one rig: the coldest night at which its furnace is still fed, by how full its cylinders are, set-up by set-up.</summary>
public sealed record LimitChart
{
    /// <summary>The fills that are taken unless asked otherwise.</summary>
    public static IReadOnlyList<double> UsualFills { get; } = [0.10, 0.20, 0.30, 0.40, 0.50, 0.65, 0.80, 1.00];

    /// <summary>The question.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The night of every cell.</summary>
    public required StandardNight Night { get; init; }

    /// <summary>The lows tried.</summary>
    public required LimitAxis Axis { get; init; }

    /// <summary>Parts of the legal filling, rising.</summary>
    public required IReadOnlyList<double> Fills { get; init; }

    /// <summary>Set-up by set-up.</summary>
    public required IReadOnlyList<LimitColumn> Columns { get; init; }

    /// <summary>All cells.</summary>
    public IEnumerable<LimitCell> Cells => Columns.SelectMany(c => c.Cells);

    /// <summary>Which of the fills is nearest to what the scenario's cylinders hold.</summary>
    public int NearestFill()
    {
        double now_frac = Scenario.Rig.Cylinders.Sum(c => c.Contents_kg) / Scenario.Rig.Cylinders.Sum(c => c.LegalFill_kg);
        return Enumerable.Range(0, Fills.Count).MinBy(i => Math.Abs(Fills[i] - now_frac));
    }

    /// <summary>Finds every cell with the whole engine, set-ups side by side; what comes out does not depend on how many at once.</summary>
    /// <param name="scenario">The rig, with a furnace.</param>
    /// <param name="axis">The lows to try.</param>
    /// <param name="fills">Parts of the legal filling, over 0 to 1; null takes the usual.</param>
    /// <param name="finished">Is told how many cells are done; may be called from several threads at once.</param>
    /// <param name="workers">How many set-ups at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">No furnace, no fills, or a cylinder that cannot start.</exception>
    public static LimitChart Of(
        Scenario scenario, LimitAxis axis, IReadOnlyList<double>? fills = null, IProgress<int>? finished = null, int? workers = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(axis);
        if (scenario.Rig.Furnace is null) throw new ArgumentException("Limits are a furnace's, and the rig has none.", nameof(scenario));
        double[] rising = [.. (fills ?? UsualFills).Distinct().Order()];
        if (rising.Length == 0 || !(rising[0] > 0) || !(rising[^1] <= 1))
            throw new ArgumentException("Fills are parts of the legal filling, over 0 to 1.", nameof(fills));
        // What could be given is asked of a furnace that runs.
        scenario = scenario with { HeatStops = null };
        StandardNight night = new(scenario);
        IReadOnlyList<SetUp> setUps = SetUp.Of(scenario.Rig);
        LimitColumn[] columns = new LimitColumn[setUps.Count];
        int done = 0;
        ParallelOptions parallel = new() { CancellationToken = cancel, MaxDegreeOfParallelism = workers ?? Environment.ProcessorCount };
        try
        {
            Parallel.For(0, setUps.Count, parallel, i =>
            {
                LimitSearch search = new(night, axis, setUps[i], cancel);
                columns[i] = search.Column(rising, () => finished?.Report(Interlocked.Increment(ref done)));
            });
        }
        catch (AggregateException e)
        {
            cancel.ThrowIfCancellationRequested();
            ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
        }

        return new LimitChart { Scenario = scenario, Night = night, Axis = axis, Fills = rising, Columns = columns };
    }
}
