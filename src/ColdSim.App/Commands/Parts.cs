using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Files.Weather;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Commands;

/// <summary>What reading a scenario gave.</summary>
/// <param name="Scenario">The scenario; null where there are problems.</param>
/// <param name="Problems">What is wrong, a line each, with its place.</param>
/// <param name="Warnings">What is odd and was taken all the same.</param>
internal sealed record ScenarioReading(Scenario? Scenario, IReadOnlyList<string> Problems, IReadOnlyList<string> Warnings)
{
    /// <summary>The scenario's options, each a scenario of its own.</summary>
    public IReadOnlyList<ComparedOption> Options { get; init; } = [];
}

/// <summary>Saturated propane at one temperature. SI units.</summary>
internal readonly record struct SaturatedPropane(double Pressure_Pa, double Liquid_kg_m3, double Vapour_kg_m3, double LatentHeat_J_kg);

/// <summary>The rest of the program as the commands see it, so that tests can stand in for any of it.</summary>
internal sealed record Parts
{
    /// <summary>Reads a scenario file and its weather.</summary>
    public required Func<string, ScenarioReading> ReadScenario { get; init; }

    /// <summary>Reads the demo that is built in.</summary>
    public required Func<ScenarioReading> ReadDemo { get; init; }

    /// <summary>Reads a weather file of any layout; its rows go to the sink, or into the result where there is none.</summary>
    public required Func<string, WeatherRequest, IRowSink?, WeatherResult> ReadWeather { get; init; }

    /// <summary>Runs a scenario.</summary>
    public required Func<Scenario, CancellationToken, RunReport> Run { get; init; }

    /// <summary>Runs a scenario and its options, and tells how many are done.</summary>
    public required Func<Scenario, IReadOnlyList<ComparedOption>, IProgress<int>, CancellationToken, Comparison> Compare { get; init; }

    /// <summary>Runs the members of an ensemble, of the scenario and its options, and tells of each that is done.</summary>
    public required Func<Scenario, IReadOnlyList<ComparedOption>, ChanceWish, IProgress<int>, CancellationToken, ChanceReport> Chance { get; init; }

    /// <summary>Says how long is left once the furnace stops at each of some instants.</summary>
    public required Func<Scenario, IReadOnlyList<DateTimeOffset>, CancellationToken, FreezeOutlook> Freeze { get; init; }

    /// <summary>Writes times to freezing as one JSON document.</summary>
    public required Action<FreezeOutlook, Stream> WriteFreezeJson { get; init; }

    /// <summary>Writes a chance as one JSON document.</summary>
    public required Action<ChanceReport, Stream> WriteChanceJson { get; init; }

    /// <summary>Writes a comparison as one JSON document.</summary>
    public required Action<Comparison, Stream> WriteCompareJson { get; init; }

    /// <summary>Writes a comparison as CSV, a row an option.</summary>
    public required Action<Comparison, TextWriter> WriteCompareCsv { get; init; }

    /// <summary>Runs a trip and asks of every refill how long it can wait, and tells how many runs are done.</summary>
    public required Func<Scenario, IProgress<int>, CancellationToken, TripReport> RunTrip { get; init; }

    /// <summary>Writes a trip as one JSON document.</summary>
    public required Action<TripReport, Stream> WriteTripJson { get; init; }

    /// <summary>Writes a trip as CSV, a row a night.</summary>
    public required Action<TripReport, TextWriter> WriteTripCsv { get; init; }

    /// <summary>Finds a rig's limits at the lows of an axis and at fills, and tells how many cells are done.</summary>
    public required Func<Scenario, LimitAxis, IReadOnlyList<double>, IProgress<int>, CancellationToken, LimitChart> Limits { get; init; }

    /// <summary>Writes limits as one JSON document.</summary>
    public required Action<LimitChart, Stream> WriteLimitsJson { get; init; }

    /// <summary>Writes limits as CSV, a row a cell.</summary>
    public required Action<LimitChart, TextWriter> WriteLimitsCsv { get; init; }

    /// <summary>Explains a scenario's first shortage, or how it stands at a time, and tells of every run that is done.</summary>
    public required Func<Scenario, DateTimeOffset?, Action, CancellationToken, Explanation> Explain { get; init; }

    /// <summary>Writes an explanation as one JSON document.</summary>
    public required Action<Explanation, Stream> WriteExplainJson { get; init; }

    /// <summary>Writes a report as one JSON document.</summary>
    public required Action<RunReport, Stream> WriteJson { get; init; }

    /// <summary>Writes the curves as CSV.</summary>
    public required Action<RunReport, TextWriter> WriteCsv { get; init; }

    /// <summary>Writes a whole file or none.</summary>
    public required Action<string, Action<Stream>> WriteFile { get; init; }

    /// <summary>Writes a commented scenario to start from, and its weather beside it; gives the weather's file.</summary>
    public required Func<string, string> WriteStarter { get; init; }

    /// <summary>A common cylinder by its name, legally full; null where there is none.</summary>
    public required Func<string, CylinderSpecification?> FindCylinder { get; init; }

    /// <summary>The names of the common cylinders.</summary>
    public required Func<IReadOnlyList<string>> CylinderNames { get; init; }

    /// <summary>Saturated propane at a temperature. [K]</summary>
    public required Func<double, SaturatedPropane> Propane { get; init; }

    /// <summary>Opens the screen on a run, in colour or not, and comes back with an exit code when it is closed.</summary>
    public required Func<Opening, UnitStyle, bool, int> Show { get; init; }

    /// <summary>The short cautions under every answer.</summary>
    public required Func<IReadOnlyList<string>> Cautions { get; init; }
}
