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

    private FitProblem(Scenario scenario, UseLog log, IFitErrors contents, IEnumerable<MeasuredObservation> measured)
    {
        (Scenario, Log) = (scenario, log);
        Rig = Before(scenario);
        Measured = [.. measured];
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

    /// <summary>Others like them, within the log's time, that a rig of several cylinders leaves out because it is not known which one fed.</summary>
    public IReadOnlyList<MeasuredObservation> Unclear { get; private init; } = [];

    /// <summary>What may separate the observations from the simulator with the right parameters.</summary>
    public IReadOnlyList<IFitErrors> Errors { get; }

    /// <summary>The stretches of a log of one cylinder between fillings; none for several.</summary>
    public IReadOnlyList<FitStretch> Stretches { get; private init; } = [];

    /// <summary>Which of several cylinders fed when; null for one.</summary>
    public FeedHistory? Feeds { get; private init; }

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

        IEnumerable<MeasuredObservation> measured = MeasuredObservation.Of(scenario.Measurements)
            .Where(o => stretches.Exists(s => o.Time >= s.From && o.Time <= s.To));
        return new(scenario, log, new ContentsErrors(log, stretches), measured)
        {
            Stretches = stretches,
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
        FeedClarity clarity = new(Before(scenario), log, feeds);
        ILookup<bool, MeasuredObservation> measured = MeasuredObservation.Of(scenario.Measurements).Where(o => clarity.Spans(o.Time))
            .ToLookup(o => clarity.IsClear(o.Cylinder, o.Time));
        return new(scenario, log, new FeedErrors(log, feeds, rows), measured[true])
        {
            Feeds = feeds,
            FeedRows = rows,
            Offsets = rows.Offsets,
            Unclear = [.. measured[false]],
        };
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

    private static Rig Before(Scenario scenario) => scenario.Fit?.Before ?? scenario.Rig;
}
