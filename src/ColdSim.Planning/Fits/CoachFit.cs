using ColdSim.Model;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Logs;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using UnitsNet;

namespace ColdSim.Planning.Fits;

/// <summary>Estimates the coach's actual heat loss from a log; docs/log-and-fit.md has the equations.</summary>
/// <remarks>
/// Nonlinear least squares with the simulator itself as the model: the masses read, whitened by the root of their full covariance, and one
/// row for each prior. Grossly wrong readings are left out one by one, the worst first.
/// </remarks>
public static class CoachFit
{
    /// <summary>Beyond so many standard uncertainties of what all others say, a reading is grossly wrong.</summary>
    public const double Gross = 5;

    /// <summary>Fewest readings.</summary>
    public const int LeastReadings = 5;

    /// <summary>Shortest time between the first and the last of a stretch, all stretches together. [h]</summary>
    public const double LeastHours = 48;

    private const double Interval = 0.8;
    private const double ClearUse = 8;
    private const double MostLeftOut_frac = 0.2;
    private const int Iterations = 8;

    // How well the use of several cylinders together is known before and after a fit, to find which of them fed.
    private const double UseBefore_frac = 0.35;
    private const double UseAfter_frac = 0.1;

    /// <summary>Fits a scenario to readings.</summary>
    /// <param name="scenario">The scenario; a fit that it carries already is not used twice.</param>
    /// <param name="readings">The log.</param>
    /// <param name="leaveOut">Whether grossly wrong readings are left out; they are named either way.</param>
    /// <param name="finished">Receives every run of the simulator through the log; may be called from several threads at once.</param>
    /// <param name="cancel">Stops it within a run.</param>
    /// <exception cref="TooLittleDataException">The log, the weather or the scenario does not allow it.</exception>
    /// <exception cref="ImpossibleReadingException">A reading fits no contents of the cylinder.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static FitReport Of(
        Scenario scenario, IReadOnlyList<LogReading> readings, bool leaveOut = true, IProgress<int>? finished = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(readings);
        UseLog all = UseLog.Of(readings, scenario.Rig);
        Refuse(scenario, all);
        List<LogReading> kept = [.. all.Rows.Select(r => r.Reading)];
        List<LogReading> gross = [];
        List<int> wrong = [];
        while (true)
        {
            Found found = Find(scenario, UseLog.Of(kept, scenario.Rig), finished, cancel);
            if (leaveOut && GrossAtCylinder(found) is { } off)
            {
                wrong.Add(off.Line);
                scenario = scenario with { Measurements = [.. scenario.Measurements.Where(m => !ReferenceEquals(m, off))] };
                continue;
            }

            int worst = Enumerable.Range(0, kept.Count).MaxBy(i => Math.Abs(found.Times[i]));
            bool more = Math.Abs(found.Times[worst]) > Gross && gross.Count < Math.Floor(MostLeftOut_frac * all.Rows.Count);
            if (!leaveOut || !more)
                return Report(scenario, all, found, gross) with { MeasuredLeftOut = [.. wrong.Order()] };
            int next = kept.FindIndex(worst + 1, r => r.Cylinder == kept[worst].Cylinder);
            if (kept[worst].Filled && next > 0)
                kept[next] = kept[next] with { Filled = true, FillingNoticed = kept[worst].FillingNoticed };
            gross.Add(kept[worst]);
            kept.RemoveAt(worst);
        }
    }

    // A thermometer that was misread; contents, which have more to say, are left out after them.
    private static Measurement? GrossAtCylinder(Found found)
    {
        FitProblem problem = found.Run.Problem;
        int first = problem.Log.Rows.Count;
        if (problem.Measured.Count == 0)
            return null;
        int worst = Enumerable.Range(0, problem.Measured.Count).MaxBy(i => Math.Abs(found.Times[first + i]));
        return Math.Abs(found.Times[first + worst]) > Gross ? problem.Measured[worst].Measurement : null;
    }

    private sealed record Found(
        FitRun Run, FitSteps Steps, FitPrediction Predicted, double[] Z, Matrix<double> Jacobian, Matrix<double> Covariance, Matrix<double> Weights,
        double[] Times, double ChiSquare, int Freedom);

    private static void Refuse(Scenario scenario, UseLog log)
    {
        List<string> reasons = [];
        if (scenario.Rig.Furnace is null || scenario.Rig.Coach is null)
            reasons.Add("the scenario has no furnace in a coach, so gas says nothing of heat");
        if (scenario.Legs.Count > 0)
            reasons.Add("the scenario moves from place to place; a fit needs one that stays");
        if (log.Rows.Count < LeastReadings)
            reasons.Add($"the log has {log.Rows.Count} {(log.Rows.Count == 1 ? "reading" : "readings")}; at least {LeastReadings} are needed");
        double hours = 0, used_kg = 0, variance = 0;
        DateTimeOffset covered = DateTimeOffset.MinValue;
        for (int i = 1; i < log.Rows.Count; i++)
        {
            if (log.Rows[i].Used is not { } used)
                continue;
            LogRow before = log.Rows.Take(i).Last(r => r.Reading.Cylinder == log.Rows[i].Reading.Cylinder);
            DateTimeOffset from = before.Reading.Time > covered ? before.Reading.Time : covered;
            hours += Math.Max(0, (log.Rows[i].Reading.Time - from).TotalHours);
            covered = log.Rows[i].Reading.Time;
            used_kg += used.Kilograms;
            variance = Math.Max(variance, Math.Pow(log.Rows[i].UsedUncertainty!.Value.Kilograms, 2));
        }

        if (hours < LeastHours)
            reasons.Add(FormattableString.Invariant($"the readings span {hours:0} h between fillings; at least {LeastHours:0} h are needed"));
        else if (used_kg < ClearUse * Math.Sqrt(variance))
            reasons.Add(FormattableString.Invariant($"in all {used_kg:0.00} kg was used, which is not clear of the readings' error of {Math.Sqrt(variance):0.00} kg; at least {ClearUse:0} times that is needed"));
        foreach (LogRow row in log.Rows)
        {
            if (row.Reading.Time < scenario.Weather.First || row.Reading.Time > scenario.Weather.Last)
            {
                reasons.Add(FormattableString.Invariant(
                    $"the reading in line {row.Reading.Line}, {row.Reading.Time:yyyy-MM-dd'T'HH:mmzzz}, lies outside the weather, {scenario.Weather.First:yyyy-MM-dd'T'HH:mmzzz} to {scenario.Weather.Last:yyyy-MM-dd'T'HH:mmzzz}"));
            }
        }

        if (reasons.Count > 0)
            throw new TooLittleDataException(reasons);
    }

    private static Found Find(Scenario scenario, UseLog log, IProgress<int>? finished, CancellationToken cancel)
    {
        if (scenario.Rig.Cylinders.Count == 1)
            return Find(new FitRun(FitProblem.Of(scenario, log), finished, cancel));
        FitProblem before = Fed(scenario, log, Middle(scenario.Fit?.Before ?? scenario.Rig), UseBefore_frac, finished, cancel);
        Found found = Find(new FitRun(before, finished, cancel));

        // What the coach uses is known better now, and with it who gave it.
        FitProblem after = Fed(scenario, log, found.Steps.At(found.Z), UseAfter_frac, finished, cancel);
        return after.Feeds!.FeedsAs(before.Feeds!) ? found : Find(new FitRun(after, finished, cancel));
    }

    private static FitProblem Fed(Scenario scenario, UseLog log, FittedFactors factors, double use_frac, IProgress<int>? finished, CancellationToken cancel)
    {
        FitRun plenty = new(FitProblem.Of(scenario, log, FeedHistory.Plenty(scenario.Rig, log)), finished, cancel);
        double[] use_kg = [.. plenty.At(factors).Given_kg.Select(g => g.Sum())];
        return FitProblem.Of(scenario, log, FeedTracker.Of(scenario.Rig, log, use_kg, use_frac));
    }

    private static FittedFactors Middle(Rig rig) => FitPrior.Of(rig).Aggregate(FittedFactors.None, (f, p) => f.With(p.Kind, p.Middle));

    private static Found Find(FitRun run)
    {
        FitProblem problem = run.Problem;
        int n = problem.Observations.Count;
        IReadOnlyList<FitPrior> priors = FitPrior.Of(problem.Rig);
        FitSteps steps = new(run, priors, Middle(problem.Rig));
        if (steps.Priors.Count == 0)
            throw new TooLittleDataException("nothing that could be learned moves the gas used by more than a few burner cycles");
        Vector<double> y = Vector<double>.Build.Dense(n, i => problem.Observations[i].Measured);
        double[] z = new double[steps.Priors.Count];
        FitPrediction predicted = run.At(steps.At(z));
        Slopes slopes = new(steps);

        // Errors grow with the use, which the first pass finds.
        Matrix<double> c = problem.Covariance(predicted);
        for (int pass = 0; pass < 2; pass++)
        {
            z = Minimise(run, steps, slopes, y, c, z);
            predicted = run.At(steps.At(z));
            c = problem.Covariance(predicted);
        }

        Matrix<double> jacobian = slopes.At(z);

        Matrix<double> w = c.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(n));
        Matrix<double> normal = jacobian.TransposeThisAndMultiply(w * jacobian) + Matrix<double>.Build.DenseIdentity(z.Length);
        Matrix<double> covariance = normal.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(z.Length));
        Vector<double> r = y - Vector<double>.Build.Dense(predicted.Values);
        Vector<double> pulled = w * r;
        Matrix<double> p = w - w * jacobian * covariance * jacobian.Transpose() * w;
        double chi = r * pulled + z.Sum(x => x * x);
        double[] times = [.. Enumerable.Range(0, n).Select(i => p[i, i] > 1e-9 ? pulled[i] / Math.Sqrt(p[i, i]) : 0)];
        return new(run, steps, predicted, z, jacobian, covariance, w, times, chi, Math.Max(1, n - problem.Offsets.Count));
    }

    // Whitened: y - f(z) has unit covariance, and so has z. One row for each reading, one for each prior.
    private static double[] Minimise(FitRun run, FitSteps steps, Slopes slopes, Vector<double> y, Matrix<double> c, double[] z0)
    {
        int n = y.Count, p = z0.Length;
        Matrix<double> l = c.Cholesky().Factor;
        Vector<double> White(Vector<double> v) => l.Solve(v);
        IObjectiveModel model = ObjectiveFunction.NonlinearModel(
            (z, _) => Joined(White(Vector<double>.Build.Dense(run.At(steps.At([.. z])).Values)), z),
            (z, _) => l.Solve(slopes.At([.. z])).Stack(Matrix<double>.Build.DenseIdentity(p)),
            Vector<double>.Build.Dense(n + p),
            Joined(White(y), Vector<double>.Build.Dense(p)));
        LevenbergMarquardtMinimizer minimizer = new(gradientTolerance: 0.05, stepTolerance: 0.02, functionTolerance: 0.05, maximumIterations: Iterations);
        return [.. minimizer.FindMinimum(model, Vector<double>.Build.Dense(z0)).MinimizingPoint];
    }

    // The simulator is nearly straight in its parameters: slopes serve until the point has moved by a good part of a prior's spread.
    private sealed class Slopes(FitSteps steps)
    {
        private const double Serves = 0.4;
        private double[]? _at;
        private Matrix<double>? _slopes;

        public Matrix<double> At(double[] z)
        {
            if (_at is null || z.Zip(_at).Any(p => Math.Abs(p.First - p.Second) > Serves))
                (_at, _slopes) = (z, steps.Jacobian(z));
            return _slopes!;
        }
    }

    private static Vector<double> Joined(Vector<double> a, Vector<double> b)
        => Vector<double>.Build.Dense(a.Count + b.Count, i => i < a.Count ? a[i] : b[i - a.Count]);

    private static FitReport Report(Scenario scenario, UseLog all, Found found, List<LogReading> gross)
    {
        double reduced = found.ChiSquare / found.Freedom;
        Matrix<double> covariance = found.Covariance * Math.Max(1, reduced);
        double half = Normal.InvCDF(0, 1, 0.5 + Interval / 2);
        if (reduced > 1)
            half = StudentT.InvCDF(0, 1, found.Freedom, 0.5 + Interval / 2);
        IReadOnlyList<FitPrior> priors = found.Steps.Priors;
        int n = priors.Count;
        FittedFactors factors = found.Steps.At(found.Z) with
        {
            Estimated = [.. priors.Select(p => p.Kind)],
            Covariance = [.. from i in Enumerable.Range(0, n) from j in Enumerable.Range(0, n) select covariance[i, j] * priors[i].Spread * priors[j].Spread],
        };
        Matrix<double> information = found.Jacobian.TransposeThisAndMultiply(found.Weights * found.Jacobian);
        var eigen = information.Evd(Symmetricity.Symmetric);
        return new()
        {
            Scenario = scenario,
            Factors = factors,
            Estimates = [.. priors.Select((p, i) => Estimate(p, factors, Math.Sqrt(covariance[i, i]) * p.Spread * half, found.Covariance[i, i]))],
            Silent = [.. FitPrior.Of(scenario.Fit?.Before ?? scenario.Rig).Select(p => p.Kind).Except(priors.Select(p => p.Kind))],
            Correlations = [.. from i in Enumerable.Range(0, n) from j in Enumerable.Range(0, n) select covariance[i, j] / Math.Sqrt(covariance[i, i] * covariance[j, j])],
            Eigenvalues = [.. eigen.EigenValues.Select(e => e.Real)],
            Confused = Confused(priors, eigen.EigenValues.Select(e => e.Real).ToArray(), eigen.EigenVectors),
            Residuals = Residuals(all, found, gross),
            ReducedChiSquare = reduced,
            Freedom = found.Freedom,
            Cycle = Mass.FromKilograms(found.Predicted.Cycle_kg),
            MeasuredUsed = found.Run.Problem.Measured.Count,
            MeasuredUnclear = [.. found.Run.Problem.Unclear.Select(o => o.Measurement.Line).Order()],
            Feeds = FeedSpan.Of(found.Run.Problem.Feeds),
            Log = all,
        };
    }

    private static FitEstimate Estimate(FitPrior prior, FittedFactors factors, double half, double variance)
    {
        double middle = factors.Coordinate(prior.Kind);
        double Natural(double coordinate) => prior.Kind switch
        {
            FitKind.HeatLoss or FitKind.Infiltration => Math.Exp(coordinate),
            FitKind.WindExposure => Math.Clamp(coordinate, 0, 1),
            _ => coordinate,
        };
        return new() { Kind = prior.Kind, Value = Natural(middle), Low = Natural(middle - half), High = Natural(middle + half), Learned_frac = Math.Clamp(1 - variance, 0, 1) };
    }

    // A direction in parameter space that the readings determine less than the prior does, and in which several parameters take part.
    private static List<IReadOnlyList<FitKind>> Confused(IReadOnlyList<FitPrior> priors, double[] values, Matrix<double> vectors)
    {
        List<IReadOnlyList<FitKind>> groups = [];
        for (int v = 0; v < values.Length; v++)
        {
            FitKind[] group = [.. Enumerable.Range(0, priors.Count).Where(i => Math.Abs(vectors[i, v]) > 0.3).Select(i => priors[i].Kind)];
            if (values[v] < 1 && group.Length > 1 && !groups.Exists(g => g.SequenceEqual(group)))
                groups.Add(group);
        }

        return groups;
    }

    private static List<FitResidual> Residuals(UseLog all, Found found, List<LogReading> gross)
    {
        (FitProblem problem, FitPrediction predicted) = gross.Count == 0 ? (found.Run.Problem, found.Predicted) : OfAll(all, found);
        FitResidual[] residuals = new FitResidual[all.Rows.Count];
        bool several = problem.Rig.Cylinders.Count > 1;
        foreach (IReadOnlyList<int> rows in problem.Offsets)
        {
            int[] good = [.. rows.Where(i => !gross.Exists(g => g.Line == all.Rows[i].Reading.Line))];
            double shift_kg = good.Length == 0 ? 0 : good.Average(i => all.Rows[i].Contents.Mass_kg - predicted.Values[i]);
            foreach (int i in rows)
            {
                double at_kg = predicted.Values[i] + shift_kg;
                bool left = !good.Contains(i);
                double off_kg = all.Rows[i].Contents.Mass_kg - at_kg;
                double t = left ? off_kg / all.Rows[i].Contents.Uncertainty_kg
                    : found.Times[found.Run.Problem.Log.Rows.ToList().FindIndex(r => r.Reading.Line == all.Rows[i].Reading.Line)];
                residuals[i] = new(all.Rows[i], Mass.FromKilograms(at_kg), Mass.FromKilograms(off_kg), t, left || Math.Abs(t) > Gross)
                {
                    OneOf = several ? problem.Rig.NameOf(all.Rows[i].Reading.Cylinder) : null,
                };
            }
        }

        return [.. residuals];
    }

    // Those that were left out too, beside what was found without them.
    private static (FitProblem Problem, FitPrediction Predicted) OfAll(UseLog all, Found found)
    {
        Scenario scenario = found.Run.Problem.Scenario;
        FittedFactors factors = found.Steps.At(found.Z);
        FitProblem problem = scenario.Rig.Cylinders.Count == 1 ? FitProblem.Of(scenario, all)
            : Fed(scenario, all, factors, UseAfter_frac, null, CancellationToken.None);
        return (problem, found.Run.Of(problem).At(factors));
    }
}
