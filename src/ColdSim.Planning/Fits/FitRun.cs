using System.Collections.Concurrent;
using ColdSim.Model;
using ColdSim.Model.Engine;

namespace ColdSim.Planning.Fits;

/// <summary>What the simulator says at the observations.</summary>
/// <param name="Values">At each, in its own unit.</param>
/// <param name="Used_kg">Gas used over all stretches. [kg]</param>
/// <param name="Cycle_kg">Gas of one burner cycle, on average. [kg]</param>
internal sealed record FitPrediction(double[] Values, double Used_kg, double Cycle_kg)
{
    /// <summary>Gas from each of several cylinders between the log's instants, a row for each; empty for one cylinder. [kg]</summary>
    public IReadOnlyList<double[]> Given_kg { get; init; } = [];
}

/// <summary>Runs the simulator through the days of a log, each stretch between fillings from its first reading on.</summary>
internal sealed class FitRun
{
    private readonly FitProblem _problem;
    private readonly int[][] _observed;
    private readonly ConcurrentDictionary<FittedFactors, FitPrediction> _known = new();
    private readonly IProgress<int>? _finished;
    private readonly CancellationToken _cancel;

    public FitRun(FitProblem problem, IProgress<int>? finished = null, CancellationToken cancel = default)
    {
        (_problem, _finished, _cancel) = (problem, finished, cancel);
        _observed = [.. problem.Stretches.Select(ObservedIn)];
    }

    /// <summary>What is compared.</summary>
    public FitProblem Problem => _problem;

    /// <summary>For work beside each other that a cancelled run ends; without it a run that is cancelled would look like a fault.</summary>
    public ParallelOptions Cancelled => new() { CancellationToken = _cancel };

    /// <summary>The same for another problem.</summary>
    public FitRun Of(FitProblem problem) => new(problem, _finished, _cancel);

    /// <summary>The prediction with these factors; run once and then kept.</summary>
    public FitPrediction At(FittedFactors factors) => _known.GetOrAdd(factors, Run);

    // A stretch begins from its own reading, so that stretches run side by side, each into its own places.
    private FitPrediction Run(FittedFactors factors)
    {
        if (_problem is { Feeds: { } feeds, FeedRows: { } rows })
        {
            FitPrediction fed = new FeedRun(_problem, feeds, rows, _cancel).At(factors);
            _finished?.Report(1);
            return fed;
        }

        IReadOnlyList<FitStretch> stretches = _problem.Stretches;
        double[] values = new double[_problem.Observations.Count], burnt_kg = new double[stretches.Count], used_kg = new double[stretches.Count];
        int[] starts = new int[stretches.Count];
        Rig rig = factors.Over(_problem.Rig);
        double heating_J_kg = _problem.Rig.Gas.HeatingValue_J_kg;
        Parallel.For(0, stretches.Count, Cancelled, s =>
        {
            FitStretch stretch = stretches[s];
            for (int i = stretch.FirstRow; i < stretch.EndRow; i++)
                values[i] = stretch.Start_kg;
            if (stretch.To <= stretch.From)
                return;
            ObservationWatch watch = new(_problem.Observations, _observed[s], values, stretch.From);
            SimulationSettings settings = new()
            {
                Start = stretch.From.ToOffset(_problem.Scenario.Start.Offset),
                Duration_s = (stretch.To - stretch.From).TotalSeconds,
                Step_s = _problem.Scenario.Step_s,
                Undersupplied_frac = _problem.Scenario.Criteria.Undersupplied.DecimalFractions,
            };
            new Simulation(rig with { Cylinders = [rig.Cylinders[0] with { Contents_kg = stretch.Start_kg }] }, _problem.Scenario.Weather, settings).Run(watch, _cancel);
            watch.Finish();
            burnt_kg[s] = watch.Burnt_J / heating_J_kg;
            starts[s] = watch.Starts;

            // A base use below zero is no appliance; its gas is given back.
            for (int i = stretch.FirstRow; factors.BaseUse_W < 0 && i < stretch.EndRow; i++)
                values[i] -= factors.BaseUse_W * (_problem.Observations[i].Time - stretch.From).TotalSeconds / heating_J_kg;
            used_kg[s] = values[stretch.FirstRow] - values[stretch.EndRow - 1];
        });

        _finished?.Report(1);
        return new(values, used_kg.Sum(), starts.Sum() == 0 ? 0 : burnt_kg.Sum() / starts.Sum());
    }

    // The stretch's own rows after its first, which is its start, and whatever else was measured in its time.
    private int[] ObservedIn(FitStretch stretch)
        =>
        [
            .. Enumerable.Range(0, _problem.Observations.Count)
                .Where(i => i < _problem.Log.Rows.Count ? i > stretch.FirstRow && i < stretch.EndRow
                    : _problem.Observations[i].Time >= stretch.From && _problem.Observations[i].Time <= stretch.To)
                .OrderBy(i => _problem.Observations[i].Time).ThenBy(i => i),
        ];
}
