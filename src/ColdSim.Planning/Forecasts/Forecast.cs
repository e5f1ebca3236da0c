using ColdSim.Model;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace ColdSim.Planning.Forecasts;

/// <summary>A span in which a value lies four times in five, and its middle.</summary>
/// <typeparam name="T">What it measures.</typeparam>
/// <param name="Low">A tenth lies below.</param>
/// <param name="Median">Half lies below.</param>
/// <param name="High">A tenth lies above.</param>
public sealed record Spread<T>(T Low, T Median, T High);

/// <summary>A run from the log's latest reading, many times over: with other contents and another coach, as their uncertainties let expect.</summary>
/// <remarks>
/// Latin hypercube of <see cref="Members"/> members with a fixed seed: each of the uncertain things is cut into as many slices of equal chance,
/// and every slice is used once. Contents are normal about the reading; the fit's parameters are normal with its covariance, in their own
/// coordinates. The weather is used as written: the spans do not include the error of its forecast.
/// </remarks>
public sealed record Forecast
{
    /// <summary>Number of runs.</summary>
    public const int Members = 40;

    private const int Seed = 20_270_112;

    /// <summary>The reading that it starts from.</summary>
    public required LogReading From { get; init; }

    /// <summary>Left at each night's dawn, night by night; null where the runs do not reach it.</summary>
    public required IReadOnlyList<Spread<Mass>?> LeftAtDawn { get; init; }

    /// <summary>When it is dry; an end that lies past the runs' end is null.</summary>
    public required Spread<DateTimeOffset?> Dry { get; init; }

    /// <summary>Runs of <see cref="Members"/> that end dry.</summary>
    public required int DryMembers { get; init; }

    /// <summary>Runs the members.</summary>
    /// <param name="start">Where they start.</param>
    /// <param name="cancel">Stops the runs.</param>
    public static Forecast Of(ForecastStart start, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(start);
        Scenario moved = start.Scenario;
        FittedFactors factors = moved.Fit?.Factors ?? FittedFactors.None;
        int n = factors.Estimated.Count;
        Matrix<double>? root = n == 0 ? null : Root(Matrix<double>.Build.Dense(n, n, (i, j) => factors.Covariance[i * n + j]));
        double[][] drawn = LatinHypercube(n + moved.Rig.Cylinders.Count);
        LeanRun[] runs = new LeanRun[Members];
        Parallel.For(0, Members, new ParallelOptions { CancellationToken = cancel }, m =>
        {
            FittedFactors member = factors;
            if (root is not null)
            {
                Vector<double> off = root * Vector<double>.Build.Dense(n, i => drawn[i + 1][m]);
                for (int i = 0; i < n; i++)
                    member = member.With(factors.Estimated[i], factors.Coordinate(factors.Estimated[i]) + off[i]);
            }

            Rig rig = moved.Fit is { } fit ? member.Over(fit.Before) : moved.Rig;
            double Drawn(int cylinder) => drawn[cylinder == 0 ? 0 : n + cylinder][m];
            runs[m] = Run(start.With(rig, Drawn), cancel);
        });
        DateTimeOffset?[] dry = [.. runs.Select(r => DryAt(moved, r)).OrderBy(d => d ?? DateTimeOffset.MaxValue)];
        return new()
        {
            From = start.Newest.Reading,
            LeftAtDawn = [.. Enumerable.Range(0, runs.Max(r => r.Nights.Count)).Select(night => Dawn(runs, night))],
            Dry = new(dry[Members / 10], dry[Members / 2], dry[Members - 1 - Members / 10]),
            DryMembers = dry.Count(d => d is not null),
        };
    }

    private static LeanRun Run(Scenario scenario, CancellationToken cancel)
    {
        LeanRun run = NightRun.Lean(scenario, UnwatchedRun.Only, cancel);
        return run.Nights.Count > 0 ? run : throw new CannotRunException(new CannotStart(run.End).Message);
    }

    private static DateTimeOffset? DryAt(Scenario scenario, LeanRun run)
        => run.Nights.Select(n => n.Dry_s).FirstOrDefault(double.IsFinite, double.NaN) is var dry_s && double.IsNaN(dry_s) ? null : scenario.Start.AddSeconds(dry_s);

    private static Spread<Mass>? Dawn(LeanRun[] runs, int night)
    {
        double[] left_kg = [.. runs.Where(r => night < r.Nights.Count).Select(r => r.Nights[night].LeftAtDawn_kg).Where(double.IsFinite).Order()];
        return left_kg.Length < Members
            ? null
            : new(Mass.FromKilograms(left_kg[Members / 10]), Mass.FromKilograms(left_kg[Members / 2]), Mass.FromKilograms(left_kg[Members - 1 - Members / 10]));
    }

    // Rounded correlations may make a covariance that is not quite one; its negative parts are noise.
    private static Matrix<double> Root(Matrix<double> covariance)
    {
        var evd = covariance.Evd(Symmetricity.Symmetric);
        return evd.EigenVectors * Matrix<double>.Build.Diagonal([.. evd.EigenValues.Select(e => Math.Sqrt(Math.Max(0, e.Real)))]);
    }

    private static double[][] LatinHypercube(int dimensions)
    {
        Random random = new(Seed);
        double[][] drawn = new double[dimensions][];
        for (int d = 0; d < dimensions; d++)
        {
            int[] slices = [.. Enumerable.Range(0, Members)];
            random.Shuffle(slices);
            drawn[d] = [.. slices.Select(s => Normal.InvCDF(0, 1, (s + 0.5) / Members))];
        }

        return drawn;
    }
}
