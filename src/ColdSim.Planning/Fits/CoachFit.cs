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
    private const double Day_s = 86_400;
    private const double UnknownStart_kg = 20;

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
        GaugedCylinder cylinder = GaugedCylinder.Of(scenario.Rig.Cylinders[0]);
        UseLog all = UseLog.Of(readings, cylinder);
        Refuse(scenario, all);
        List<LogReading> kept = [.. all.Rows.Select(r => r.Reading)];
        List<LogReading> gross = [];
        while (true)
        {
            UseLog log = UseLog.Of(kept, cylinder);
            Found found = Find(new FitRun(scenario, log.Rows, finished, cancel), log);
            int worst = Enumerable.Range(0, kept.Count).MaxBy(i => Math.Abs(found.Times[i]));
            bool more = Math.Abs(found.Times[worst]) > Gross && gross.Count < Math.Floor(MostLeftOut_frac * all.Rows.Count);
            if (!leaveOut || !more)
                return Report(scenario, all, found, gross);
            if (kept[worst].Filled && worst + 1 < kept.Count)
                kept[worst + 1] = kept[worst + 1] with { Filled = true };
            gross.Add(kept[worst]);
            kept.RemoveAt(worst);
        }
    }

    private sealed record Found(
        UseLog Log, FitRun Run, FitSteps Steps, FitPrediction Predicted, double[] Z, Matrix<double> Jacobian, Matrix<double> Covariance, Matrix<double> Weights,
        double[] Times, double ChiSquare, int Freedom);

    private static void Refuse(Scenario scenario, UseLog log)
    {
        List<string> reasons = [];
        if (scenario.Rig.Furnace is null || scenario.Rig.Coach is null)
            reasons.Add("the scenario has no furnace in a coach, so gas says nothing of heat");
        if (scenario.Rig.Cylinders.Count != 1)
            reasons.Add("the scenario has several cylinders; a log tells of one");
        if (scenario.Legs.Count > 0)
            reasons.Add("the scenario moves from place to place; a fit needs one that stays");
        if (log.Rows.Count < LeastReadings)
            reasons.Add($"the log has {log.Rows.Count} {(log.Rows.Count == 1 ? "reading" : "readings")}; at least {LeastReadings} are needed");
        double hours = 0, used_kg = 0, variance = 0;
        for (int i = 1; i < log.Rows.Count; i++)
        {
            if (log.Rows[i].Used is not { } used)
                continue;
            hours += (log.Rows[i].Reading.Time - log.Rows[i - 1].Reading.Time).TotalHours;
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

    private static Found Find(FitRun run, UseLog log)
    {
        int n = log.Rows.Count;
        IReadOnlyList<FitPrior> priors = FitPrior.Of(run.Rig);
        FittedFactors start = priors.Aggregate(FittedFactors.None, (f, p) => f.With(p.Kind, p.Middle));
        FitSteps steps = new(run, priors, start);
        if (steps.Priors.Count == 0)
            throw new TooLittleDataException("nothing that could be learned moves the gas used by more than a few burner cycles");
        Vector<double> y = Vector<double>.Build.Dense(n, i => log.Rows[i].Contents.Mass_kg);
        double[] z = new double[steps.Priors.Count];
        FitPrediction predicted = run.At(steps.At(z));
        Slopes slopes = new(steps, n);

        // Errors grow with the use, which the first pass finds.
        Matrix<double> c = ErrorCovariance(log, run, predicted);
        for (int pass = 0; pass < 2; pass++)
        {
            z = Minimise(run, steps, slopes, y, c, z);
            predicted = run.At(steps.At(z));
            c = ErrorCovariance(log, run, predicted);
        }

        Matrix<double> jacobian = slopes.At(z);

        Matrix<double> w = c.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(n));
        Matrix<double> normal = jacobian.TransposeThisAndMultiply(w * jacobian) + Matrix<double>.Build.DenseIdentity(z.Length);
        Matrix<double> covariance = normal.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(z.Length));
        Vector<double> r = y - Vector<double>.Build.Dense(predicted.Mass_kg);
        Vector<double> pulled = w * r;
        Matrix<double> p = w - w * jacobian * covariance * jacobian.Transpose() * w;
        double chi = r * pulled + z.Sum(x => x * x);
        double[] times = [.. Enumerable.Range(0, n).Select(i => p[i, i] > 1e-9 ? pulled[i] / Math.Sqrt(p[i, i]) : 0)];
        return new(log, run, steps, predicted, z, jacobian, covariance, w, times, chi, Math.Max(1, n - run.Stretches.Count));
    }

    // Whitened: y - f(z) has unit covariance, and so has z. One row for each reading, one for each prior.
    private static double[] Minimise(FitRun run, FitSteps steps, Slopes slopes, Vector<double> y, Matrix<double> c, double[] z0)
    {
        int n = y.Count, p = z0.Length;
        Matrix<double> l = c.Cholesky().Factor;
        Vector<double> White(Vector<double> v) => l.Solve(v);
        IObjectiveModel model = ObjectiveFunction.NonlinearModel(
            (z, _) => Joined(White(Vector<double>.Build.Dense(run.At(steps.At([.. z])).Mass_kg)), z),
            (z, _) => l.Solve(slopes.At([.. z])).Stack(Matrix<double>.Build.DenseIdentity(p)),
            Vector<double>.Build.Dense(n + p),
            Joined(White(y), Vector<double>.Build.Dense(p)));
        LevenbergMarquardtMinimizer minimizer = new(gradientTolerance: 0.05, stepTolerance: 0.02, functionTolerance: 0.05, maximumIterations: Iterations);
        return [.. minimizer.FindMinimum(model, Vector<double>.Build.Dense(z0)).MinimizingPoint];
    }

    // The simulator is nearly straight in its parameters: slopes serve until the point has moved by a good part of a prior's spread.
    private sealed class Slopes(FitSteps steps, int rows)
    {
        private const double Serves = 0.4;
        private double[]? _at;
        private Matrix<double>? _slopes;

        public Matrix<double> At(double[] z)
        {
            if (_at is null || z.Zip(_at).Any(p => Math.Abs(p.First - p.Second) > Serves))
                (_at, _slopes) = (z, steps.Jacobian(z, rows));
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
        FitPrediction predicted = gross.Count == 0 ? found.Predicted : found.Run.Through(all.Rows).At(found.Steps.At(found.Z));
        List<FitResidual> residuals = [];
        int start = 0;
        while (start < all.Rows.Count)
        {
            int end = start + 1;
            while (end < all.Rows.Count && !all.Rows[end].Reading.Filled)
                end++;
            int[] good = [.. Enumerable.Range(start, end - start).Where(i => !gross.Exists(g => g.Line == all.Rows[i].Reading.Line))];
            double shift_kg = good.Length == 0 ? 0 : good.Average(i => all.Rows[i].Contents.Mass_kg - predicted.Mass_kg[i]);
            for (int i = start; i < end; i++)
            {
                double at_kg = predicted.Mass_kg[i] + shift_kg;
                bool left = !good.Contains(i);
                double off_kg = all.Rows[i].Contents.Mass_kg - at_kg;
                double t = left ? off_kg / all.Rows[i].Contents.Uncertainty_kg : found.Times[found.Log.Rows.ToList().FindIndex(r => r.Reading.Line == all.Rows[i].Reading.Line)];
                residuals.Add(new(all.Rows[i], Mass.FromKilograms(at_kg), Mass.FromKilograms(off_kg), t, left || Math.Abs(t) > Gross));
            }

            start = end;
        }

        return residuals;
    }

    // Covariance of the readings about the simulator with the right parameters. It is the sum of: the readings' own errors with what they share;
    // half a burner cycle, the resolution of a simulated mass; a random walk for what a day brings that the model does not know (doors, cooking,
    // visitors); the model's lasting error; and, for each interval between fillings, an unknown start, which removes whatever is common to all
    // of its readings.
    private static Matrix<double> ErrorCovariance(UseLog log, FitRun run, FitPrediction predicted)
    {
        int n = log.Rows.Count;
        Matrix<double> c = log.Covariance();
        double[] used = new double[n], walked = new double[n];
        foreach ((int first, int end) in run.Stretches)
        {
            for (int i = first + 1; i < end; i++)
            {
                double days = Math.Max((log.Rows[i].Reading.Time - log.Rows[i - 1].Reading.Time).TotalSeconds, 1) / Day_s;
                double use_kg = predicted.Mass_kg[i - 1] - predicted.Mass_kg[i];
                used[i] = predicted.Mass_kg[first] - predicted.Mass_kg[i];
                walked[i] = walked[i - 1] + LogPrediction.Day_frac * LogPrediction.Day_frac * use_kg * use_kg / days;
            }

            for (int i = first; i < end; i++)
            {
                for (int j = first; j < end; j++)
                    c[i, j] += UnknownStart_kg * UnknownStart_kg + walked[Math.Min(i, j)];
            }
        }

        for (int i = 0; i < n; i++)
        {
            c[i, i] += 0.25 * predicted.Cycle_kg * predicted.Cycle_kg;
            for (int j = 0; j < n; j++)
                c[i, j] += LogPrediction.Lasting_frac * LogPrediction.Lasting_frac * used[i] * used[j];
        }

        return c;
    }
}
