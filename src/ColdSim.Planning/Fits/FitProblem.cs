using ColdSim.Model;
using ColdSim.Planning.Logs;
using MathNet.Numerics.LinearAlgebra;

namespace ColdSim.Planning.Fits;

/// <summary>A stretch of a log between fillings, through which the simulator is run from its first reading on.</summary>
/// <param name="FirstRow">Its first row in the log.</param>
/// <param name="EndRow">The row after its last.</param>
/// <param name="From">When it begins.</param>
/// <param name="To">When it ends.</param>
/// <param name="Start_kg">What the cylinder holds when it begins. [kg]</param>
internal sealed record FitStretch(int FirstRow, int EndRow, DateTimeOffset From, DateTimeOffset To, double Start_kg);

/// <summary>What a fit compares: the observations, the errors that may separate them from the simulator, and the stretches to be run.</summary>
internal sealed class FitProblem
{
    private const double Least_kg = 0.05;

    private FitProblem(Scenario scenario, UseLog log, IReadOnlyList<FitStretch> stretches, FeedHistory? feeds, IFitErrors contents)
    {
        (Scenario, Log, Stretches, Feeds) = (scenario, log, stretches, feeds);
        Rig = scenario.Fit?.Before ?? scenario.Rig;
        Measured = [.. MeasuredObservation.Of(scenario.Measurements).Where(o => stretches.Any(s => o.Time >= s.From && o.Time <= s.To))];
        Observations = [.. log.Rows.Select(r => new ContentsObservation(r)), .. Measured];
        Errors = [contents, .. Measured.Count == 0 ? Array.Empty<IFitErrors>() : [new MeasuredErrors(Measured, log.Rows.Count)]];
    }

    /// <summary>The scenario.</summary>
    public Scenario Scenario { get; }

    /// <summary>The rig without a fit that the scenario carries.</summary>
    public Rig Rig { get; }

    /// <summary>The log, whose rows are the first observations.</summary>
    public UseLog Log { get; }

    /// <summary>What was measured: the log's rows in their order, then whatever else there is.</summary>
    public IReadOnlyList<FitObservation> Observations { get; }

    /// <summary>Those of them that were measured at the cylinder beside its contents.</summary>
    public IReadOnlyList<MeasuredObservation> Measured { get; }

    /// <summary>What may separate the observations from the simulator with the right parameters.</summary>
    public IReadOnlyList<IFitErrors> Errors { get; }

    /// <summary>The stretches of a log of one cylinder between fillings; none for several.</summary>
    public IReadOnlyList<FitStretch> Stretches { get; }

    /// <summary>Which of several cylinders fed when; null for one.</summary>
    public FeedHistory? Feeds { get; }

    /// <summary>The rows of the log beside the gaps of <see cref="Feeds"/>; null for one cylinder.</summary>
    public FeedRows? FeedRows { get; private init; }

    /// <summary>Rows of the log of which only the differences are compared, because they share an offset that nobody knows; a group for each.</summary>
    public required IReadOnlyList<IReadOnlyList<int>> Offsets { get; init; }

    /// <summary>The problem of a log of one cylinder.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="log">Its log, with at least one row.</param>
    public static FitProblem Of(Scenario scenario, UseLog log)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        List<FitStretch> stretches = [];
        for (int i = 0; i < log.Rows.Count; i++)
        {
            LogRow row = log.Rows[i];
            if (i == 0 || row.Reading.Filled)
                stretches.Add(new(i, i + 1, row.Reading.Time, row.Reading.Time, Math.Max(Least_kg, row.Contents.Mass_kg)));
            else
                stretches[^1] = stretches[^1] with { EndRow = i + 1, To = row.Reading.Time };
        }

        return new(scenario, log, stretches, null, new ContentsErrors(log, stretches))
        {
            Offsets = [.. stretches.Select(s => (IReadOnlyList<int>)[.. Enumerable.Range(s.FirstRow, s.EndRow - s.FirstRow)])],
        };
    }

    /// <summary>The problem of a log of several cylinders.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="log">Its log, with at least one row.</param>
    /// <param name="feeds">Which of them fed when.</param>
    public static FitProblem Of(Scenario scenario, UseLog log, FeedHistory feeds)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(feeds);
        FeedRows rows = new(log, feeds);
        return new(scenario, log, [], feeds, new FeedErrors(log, feeds, rows)) { FeedRows = rows, Offsets = rows.Offsets };
    }

    /// <summary>Covariance of the observations about the simulator with the right parameters, each in its own unit.</summary>
    /// <param name="predicted">What the simulator says at them.</param>
    public Matrix<double> Covariance(FitPrediction predicted)
    {
        Matrix<double> covariance = Matrix<double>.Build.Dense(Observations.Count, Observations.Count);
        foreach (IFitErrors errors in Errors)
            errors.AddTo(covariance, predicted);
        return covariance;
    }
}
