using ColdSim.Model.Engine;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Explain;

/// <summary>Why gas is short in a run, or the state at a time; and what to do about it.</summary>
public sealed record Explanation
{
    /// <summary>The run that is explained.</summary>
    public required RunReport Report { get; init; }

    /// <summary>The chain of cause up to the instant explained.</summary>
    public required ChainOfCause Chain { get; init; }

    /// <summary>Whether an instant was requested; then only the chain is worked out.</summary>
    public bool AtTime { get; init; }

    /// <summary>The shortage that is explained; null where nothing is short, or an instant was requested.</summary>
    public DateTimeOffset? Shortage { get; init; }

    /// <summary>Number of the night it is in; 0 without one.</summary>
    public int Night { get; init; }

    /// <summary>Which limit binds; null without a shortage.</summary>
    public BindingLimit? Limit { get; init; }

    /// <summary>The first night that does not hold, which is explained; null where all hold, or an instant was requested.</summary>
    public NightReport? Failed { get; init; }

    /// <summary>The amounts that the person can set or buy, in which the plan is.</summary>
    public required AmountGrid Grid { get; init; }

    /// <summary>What to do, or what a run that holds can still bear; null where an instant was requested.</summary>
    public ActionPlan? Plan { get; init; }

    /// <summary>Runs a scenario and explains its first shortage, or its state at a time.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="grid">The amounts that the person can set or buy.</param>
    /// <param name="at">A time within the run, or null for the first shortage.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many runs at once; null takes one for each processor. The outcome does not depend on it.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="TimeOutsideRunException">A time outside the run.</exception>
    /// <exception cref="LedgerOpenException">The ledger of a run does not close.</exception>
    /// <exception cref="CannotRunException">The rig cannot start.</exception>
    public static Explanation Of(
        Scenario scenario, AmountGrid grid, DateTimeOffset? at = null, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        RunReport report = NightRun.Of(scenario, cancel);
        finished?.Invoke();
        if (!report.Ledger.Closes) throw new LedgerOpenException(report.Ledger);
        if (at is { } time)
        {
            DateTimeOffset end = report.Nights[^1].To;
            if (time < scenario.Start || time > end)
                throw new TimeOutsideRunException(time);
            return new Explanation { Report = report, Grid = grid, Chain = ChainOfCause.Before(report, time), AtTime = true };
        }

        return Of(report, grid, finished, workers, cancel);
    }

    /// <summary>Explains the first night of a run that does not hold, or how close it comes.</summary>
    /// <param name="report">The run.</param>
    /// <param name="grid">The amounts that the person can set or buy.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many runs at once; null takes one for each processor. The outcome does not depend on it.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="LedgerOpenException">The ledger of a run does not close.</exception>
    public static Explanation Of(
        RunReport report, AmountGrid grid, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        ActionPlan plan = ActionPlan.Of(report, grid, finished, workers, cancel);
        return Reason(report, grid, finished, workers, cancel) with { Plan = plan };
    }

    /// <summary>The same without what to do about it, which takes many more runs.</summary>
    /// <param name="report">The run.</param>
    /// <param name="grid">The amounts that the person can set or buy.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many runs at once; null takes one for each processor. The outcome does not depend on it.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="LedgerOpenException">The ledger of a run does not close.</exception>
    public static Explanation Reason(
        RunReport report, AmountGrid grid, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.Nights.FirstOrDefault(n => n.Verdict != Verdict.Holds) is not { FirstFailure: { } failure } night)
            return new Explanation { Report = report, Grid = grid, Chain = ChainOfCause.Before(report, Closest(report)) };
        bool ofGas = night.Verdict is Verdict.GasShort or Verdict.GasGone;
        DateTimeOffset begins = ofGas ? night.FirstShort ?? failure : failure;
        return new Explanation
        {
            Report = report,
            Grid = grid,
            Chain = ChainOfCause.Before(report, begins),
            Failed = night,
            Shortage = ofGas ? begins : null,
            Night = night.Number,
            Limit = ofGas ? BindingLimit.Of(report.Scenario, begins, finished, workers, cancel) : null,
        };
    }

    // Where nothing is short: the lowest pressure while gas was in demand.
    private static DateTimeOffset Closest(RunReport report)
    {
        RunSeries series = report.Series;
        int closest = 0;
        double lowest_Pa = double.PositiveInfinity;
        for (int i = 1; i < series.Count; i++)
        {
            if (series.Asked_W[i] <= 0 || series.CylinderPressure_Pa[i] >= lowest_Pa) continue;
            (closest, lowest_Pa) = (i, series.CylinderPressure_Pa[i]);
        }

        return report.Scenario.Start.AddSeconds(closest * RunSeries.Spacing_s);
    }
}
