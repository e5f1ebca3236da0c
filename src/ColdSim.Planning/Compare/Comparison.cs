using System.Runtime.ExceptionServices;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;
using UnitsNet;

namespace ColdSim.Planning.Compare;

/// <summary>Several options over the same nights, in order of how well they do.</summary>
public sealed record Comparison
{
    /// <summary>The base.</summary>
    public required Scenario Base { get; init; }

    /// <summary>The best first; the base is among them.</summary>
    public required IReadOnlyList<ComparedRow> Rows { get; init; }

    /// <summary>The first row.</summary>
    public ComparedRow Best => Rows[0];

    /// <summary>Whether any of them holds all nights.</summary>
    public bool AnyHolds => Rows.Any(r => r.Holds);

    /// <summary>Runs the base and every option, several at once, each with the whole engine; the order does not depend on how many.</summary>
    /// <param name="scenario">The base.</param>
    /// <param name="options">What to try, in the order in which ties are broken.</param>
    /// <param name="finished">Is told how many runs are done; may be called from several threads at once.</param>
    /// <param name="workers">How many at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">An option cannot be run; the message names it. See <see cref="NightRun.Of"/>.</exception>
    public static Comparison Of(
        Scenario scenario, IReadOnlyList<ComparedOption> options, IProgress<int>? finished = null, int? workers = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(options);
        ComparedOption[] all = [new(ComparedOption.AsItIs, scenario), .. options];
        ComparedRow[] rows = new ComparedRow[all.Length];
        int done = 0;
        ParallelOptions parallel = new() { CancellationToken = cancel, MaxDegreeOfParallelism = workers ?? Environment.ProcessorCount };
        try
        {
            Parallel.For(0, all.Length, parallel, i =>
            {
                rows[i] = Row(all[i], i, cancel);
                finished?.Report(Interlocked.Increment(ref done));
            });
        }
        catch (AggregateException e)
        {
            cancel.ThrowIfCancellationRequested();
            ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
        }

        return new Comparison { Base = scenario, Rows = Ranking.Ordered(rows) };
    }

    private static Mass? LeftBehind(IReadOnlyList<BlendReport> blends)
        => blends.Count > 0 && blends.All(b => b.LeftBehind is not null) ? Mass.FromKilograms(blends.Sum(b => b.LeftBehind!.Value.Kilograms)) : null;

    // The curves are let go at once; with many options and a whole winter they would be hundreds of megabytes.
    private static ComparedRow Row(ComparedOption option, int order, CancellationToken cancel)
    {
        try
        {
            RecordedRun run = RecordedRun.Of(option.Scenario, cancel);
            RunReport report = run.Report;
            return new ComparedRow
            {
                Option = option,
                Order = order,
                Summary = report.Summary,
                Ledger = report.Ledger,
                End = report.End,
                Cost = TripMoney.Of(run).Cost,
                LeftBehind = LeftBehind(report.Nights[^1].Blends),
            };
        }
        catch (ArgumentException e)
        {
            throw new ArgumentException($"Option '{option.Name}': {e.Message}", nameof(option), e);
        }
    }
}
