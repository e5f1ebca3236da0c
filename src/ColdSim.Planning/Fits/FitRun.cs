using System.Collections.Concurrent;
using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Planning.Logs;

namespace ColdSim.Planning.Fits;

/// <summary>What the simulator says at the readings.</summary>
/// <param name="Mass_kg">Propane left at each. [kg]</param>
/// <param name="Cycle_kg">Gas of one burner cycle, on average. [kg]</param>
internal sealed record FitPrediction(double[] Mass_kg, double Cycle_kg);

/// <summary>Runs the simulator through the days of a log, each stretch between fillings from its first reading on.</summary>
internal sealed class FitRun
{
    private readonly Scenario _scenario;
    private readonly Rig _rig;
    private readonly IReadOnlyList<LogRow> _rows;
    private readonly List<(int First, int End)> _stretches = [];
    private readonly ConcurrentDictionary<FittedFactors, FitPrediction> _known = new();
    private readonly IProgress<int>? _finished;
    private readonly CancellationToken _cancel;

    public FitRun(Scenario scenario, IReadOnlyList<LogRow> rows, IProgress<int>? finished = null, CancellationToken cancel = default)
    {
        (_scenario, _rig, _rows, _finished, _cancel) = (scenario, scenario.Fit?.Before ?? scenario.Rig, rows, finished, cancel);
        for (int i = 0; i < rows.Count; i++)
        {
            if (i == 0 || rows[i].Reading.Filled)
                _stretches.Add((i, i + 1));
            else
                _stretches[^1] = (_stretches[^1].First, i + 1);
        }
    }

    /// <summary>The rig without a fit that the scenario carries.</summary>
    public Rig Rig => _rig;

    public IReadOnlyList<(int First, int End)> Stretches => _stretches;

    /// <summary>The same through other readings.</summary>
    public FitRun Through(IReadOnlyList<LogRow> rows) => new(_scenario, rows, _finished, _cancel);

    /// <summary>For work beside each other that a cancelled run ends; without it a run that is cancelled would look like a fault.</summary>
    public ParallelOptions Cancelled => new() { CancellationToken = _cancel };

    /// <summary>The prediction with these factors; run once and then kept.</summary>
    public FitPrediction At(FittedFactors factors) => _known.GetOrAdd(factors, Run);

    // A stretch begins from its own reading, so that stretches run side by side, each into its own places.
    private FitPrediction Run(FittedFactors factors)
    {
        double[] mass_kg = new double[_rows.Count], burnt_kg = new double[_stretches.Count];
        int[] starts = new int[_stretches.Count];
        Rig rig = factors.Over(_rig);
        Parallel.For(0, _stretches.Count, Cancelled, s =>
        {
            (int first, int end) = _stretches[s];
            mass_kg[first] = Math.Max(0.05, _rows[first].Contents.Mass_kg);
            if (end - first < 2)
                return;
            MassAt watch = new(mass_kg, first, [.. Enumerable.Range(first, end - first).Select(i => Since_s(first, i))]);
            SimulationSettings settings = new()
            {
                Start = _rows[first].Reading.Time.ToOffset(_scenario.Start.Offset),
                Duration_s = Since_s(first, end - 1),
                Step_s = _scenario.Step_s,
                Undersupplied_frac = _scenario.Criteria.Undersupplied.DecimalFractions,
            };
            new Simulation(rig with { Cylinders = [rig.Cylinders[0] with { Contents_kg = mass_kg[first] }] }, _scenario.Weather, settings).Run(watch, _cancel);
            watch.Finish();
            burnt_kg[s] = watch.Burnt_J / _rig.Gas.HeatingValue_J_kg;
            starts[s] = watch.Starts;

            // A base use below zero is no appliance; its gas is given back.
            for (int i = first; factors.BaseUse_W < 0 && i < end; i++)
                mass_kg[i] -= factors.BaseUse_W * Since_s(first, i) / _rig.Gas.HeatingValue_J_kg;
        });

        _finished?.Report(1);
        return new(mass_kg, starts.Sum() == 0 ? 0 : burnt_kg.Sum() / starts.Sum());
    }

    private double Since_s(int first, int i) => (_rows[i].Reading.Time - _rows[first].Reading.Time).TotalSeconds;

    private sealed class MassAt(double[] mass_kg, int first, double[] times_s) : IRunObserver
    {
        private int _next = 1;
        private double _last_kg = mass_kg[first];

        public double Burnt_J { get; private set; }

        public int Starts { get; private set; }

        public void Stepped(StepRecord record)
        {
            double step_s = record.To.Time_s - record.From.Time_s;
            while (_next < times_s.Length && times_s[_next] <= record.To.Time_s + 1e-6)
            {
                double x = Math.Clamp((times_s[_next] - record.From.Time_s) / step_s, 0, 1);
                mass_kg[first + _next++] = record.From.Propane_kg + x * (record.To.Propane_kg - record.From.Propane_kg);
            }

            _last_kg = record.To.Propane_kg;
            if (record.BurnerLit)
                Burnt_J += record.Given_W * step_s;
        }

        public void Happened(in SimulationEvent happened, in Snapshot moment)
        {
            if (happened.Kind == EventKind.BurnerOn)
                Starts++;
        }

        // After a cylinder has ended the run there is nothing more to predict.
        public void Finish()
        {
            while (_next < times_s.Length)
                mass_kg[first + _next++] = _last_kg;
        }
    }
}
