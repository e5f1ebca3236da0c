using ColdSim.Model;
using ColdSim.Model.Engine;
using ColdSim.Planning.Logs;

namespace ColdSim.Planning.Fits;

/// <summary>Runs the simulator through a log of several cylinders, from instant to instant of reading.</summary>
/// <remarks>
/// The coach goes on as warm as it was. At each instant the cylinders are set to what they held by the history, and the one that was in use
/// is put first, which is the open one, or the service side. It has enough to give (<see cref="FeedContents"/>): that it gave it is known from the
/// readings, and a run that goes short a little sooner or later would make the use jump with every parameter.
/// </remarks>
internal sealed class FeedRun(FitProblem problem, FeedHistory feeds, FeedRows rows, CancellationToken cancel)
{
    private readonly Scenario _scenario = problem.Scenario;

    /// <summary>The prediction with these factors.</summary>
    /// <param name="factors">The factors.</param>
    public FitPrediction At(FittedFactors factors)
    {
        Rig rig = factors.Over(problem.Rig);
        int n = rig.Cylinders.Count;
        double[] values = new double[problem.Observations.Count];
        List<double[]> given_kg = [];
        Passage passage = new(problem, rig, values, cancel);
        for (int g = 0; g < feeds.Gaps.Count; g++)
            given_kg.Add(Run(passage, g, factors.BaseUse_W, n));
        foreach (IGrouping<(int, int), int> stretch in Enumerable.Range(0, problem.Log.Rows.Count).GroupBy(i => (Cylinder(i), rows.FirstGap(i))))
        {
            foreach (int i in stretch)
                values[i] = problem.Log.Rows[stretch.First()].Contents.Mass_kg - Enumerable.Range(rows.FirstGap(i), rows.EndGap(i) - rows.FirstGap(i)).Sum(g => given_kg[g][Cylinder(i)]);
        }

        return new(values, given_kg.Sum(u => u.Sum()), passage.Starts == 0 ? 0 : passage.Burnt_J / rig.Gas.HeatingValue_J_kg / passage.Starts)
        {
            Given_kg = given_kg,
        };
    }

    private double[] Held_kg(int gap, int inUse) => FeedContents.Of(problem.Rig, feeds, gap, inUse);

    private int Cylinder(int row) => problem.Log.Rows[row].Reading.Cylinder;

    private double[] Run(Passage passage, int g, double baseUse_W, int n)
    {
        FeedGap gap = feeds.Gaps[g];
        double[] used_kg;
        if (gap.First == gap.Last)
        {
            used_kg = passage.Run(gap.From, gap.To, gap.First, Held_kg(g, gap.First));
        }
        else
        {
            // When it was changed is not known, and the errors allow any division.
            DateTimeOffset middle = gap.From + (gap.To - gap.From) / 2;
            used_kg = passage.Run(gap.From, middle, gap.First, Held_kg(g, gap.First));
            double[] then_kg = passage.Run(middle, gap.To, gap.Last, Held_kg(g, gap.Last));
            for (int i = 0; i < n; i++)
                used_kg[i] += then_kg[i];
        }

        // A base use below zero is no appliance; its gas is given back.
        double sum_kg = used_kg.Sum();
        double back_kg = baseUse_W >= 0 || sum_kg <= 0 ? 0 : -baseUse_W * (gap.To - gap.From).TotalSeconds / problem.Rig.Gas.HeatingValue_J_kg;
        for (int i = 0; i < n && back_kg > 0; i++)
            used_kg[i] -= back_kg * used_kg[i] / sum_kg;
        return used_kg;
    }

    // The coach on its way through the gaps of a log.
    private sealed class Passage(FitProblem problem, Rig rig, double[] values, CancellationToken cancel)
    {
        private readonly int _n = rig.Cylinders.Count;
        private RigState? _state;
        private int _first;

        public double Burnt_J { get; private set; }

        public int Starts { get; private set; }

        // Gas from each cylinder from one instant to another, the one at a place in use, in the scenario's order.
        public double[] Run(DateTimeOffset from, DateTimeOffset to, int first, double[] held_kg)
        {
            double[] used_kg = new double[_n];
            if (to <= from)
                return used_kg;
            int[] order = [.. Enumerable.Range(0, _n).Select(i => (first + i) % _n)];
            Scenario scenario = problem.Scenario;
            SimulationSettings settings = new()
            {
                Start = from.ToOffset(scenario.Start.Offset),
                Duration_s = (to - from).TotalSeconds,
                Step_s = scenario.Step_s,
                Undersupplied_frac = scenario.Criteria.Undersupplied.DecimalFractions,
                From = _state is null ? null : _state with
                {
                    InUse = 0,
                    Cylinders = [.. order.Select(c => _state.Cylinders[(c - _first + _n) % _n] with { Propane_kg = held_kg[c] })],
                },
            };
            Rig turned = rig with { Cylinders = [.. order.Select(c => rig.Cylinders[c] with { Contents_kg = held_kg[c] })] };
            Simulation simulation = new(turned, scenario.Weather, settings);
            int rows = problem.Log.Rows.Count;
            int[] observed =
            [
                .. Enumerable.Range(rows, problem.Observations.Count - rows)
                    .Where(i => problem.Observations[i].Time >= from && (problem.Observations[i].Time < to || to == problem.Log.Rows[^1].Reading.Time))
                    .OrderBy(i => problem.Observations[i].Time).ThenBy(i => i),
            ];
            ObservationWatch watch = new(problem.Observations, observed, values, from, first, _n);
            simulation.Run(watch, cancel);
            watch.Finish();
            Burnt_J += watch.Burnt_J;
            Starts += watch.Starts;
            (_state, _first) = (simulation.State(), first);
            for (int i = 0; i < _n; i++)
                used_kg[order[i]] = held_kg[order[i]] - _state.Cylinders[i].Propane_kg;
            return used_kg;
        }
    }
}
