using ColdSim.Planning.Logs;
using ColdSim.Planning.Nights;
using UnitsNet.Units;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Forecasts.ForecastReport>;
using Dry = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Forecasts.Spread<System.DateTimeOffset?>>;
using Left = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Forecasts.DawnSpread>;

namespace ColdSim.Planning.Forecasts;

/// <summary>What is reported of a run from the log's latest reading.</summary>
internal static class ForecastFigures
{
    private static IReadOnlyList<Dry> DrySpread { get; } =
    [
        Dry.Time("low", s => s.Low, "a tenth of the runs are dry before; null where that lies past the end", canBeAbsent: true),
        Dry.Time("median", s => s.Median, "half are", canBeAbsent: true),
        Dry.Time("high", s => s.High, "nine tenths are", canBeAbsent: true),
    ];

    private static IReadOnlyList<Left> LeftAtDawn { get; } =
    [
        Left.Count("night", d => d.Night.Number, "the night's number"),
        Left.Quantity("low", d => d.Left.Low, MassUnit.Kilogram, "a tenth of the runs have less"),
        Left.Quantity("median", d => d.Left.Median, MassUnit.Kilogram, "half have"),
        Left.Quantity("high", d => d.Left.High, MassUnit.Kilogram, "nine tenths have"),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        Document.Count("from_line", f => f.Forecast.From.Line, "the reading's line in the log"),
        Document.Time("from", f => f.Forecast.From.Time.ToOffset(f.Run.Scenario.Start.Offset), "when it was read"),
        Document.Flag("fitted", f => f.Run.Scenario.Fit is not null, "whether a fit's doubt is in the spans"),
        Document.Count("members", _ => Forecast.Members, "how many runs the spans are of"),
        Document.Count("dry_members", f => f.Forecast.DryMembers, "how many of them end dry"),
        Document.Group("dry", f => f.Forecast.Dry, DrySpread, "when it is dry"),
        Document.Rows("left_at_dawn_kg", f => f.Dawns, LeftAtDawn, "propane left at each dawn that all runs reach"),
        Document.Rows("days", f => LogDay.Of(f.Log, f.Run.Scenario), LogFigures.Days, "daily use so far, as far as readings cover it"),
    ];
}

/// <summary>A forecast with the run that it is of and the log that it starts from.</summary>
/// <param name="Run">The run from the latest reading.</param>
/// <param name="Forecast">Its spans.</param>
/// <param name="Log">The readings so far, beside the simulator.</param>
public sealed record ForecastReport(RunReport Run, Forecast Forecast, LogPrediction Log)
{
    /// <summary>The nights whose dawn all runs reach.</summary>
    public IEnumerable<DawnSpread> Dawns => Run.Nights.Zip(Forecast.LeftAtDawn).Where(n => n.Second is not null).Select(n => new DawnSpread(n.First, n.Second!));
}

/// <summary>Propane left at a night's dawn.</summary>
/// <param name="Night">The night.</param>
/// <param name="Left">The spread over the runs.</param>
public sealed record DawnSpread(NightReport Night, Spread<UnitsNet.Mass> Left);
