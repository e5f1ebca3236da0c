using System.Runtime.CompilerServices;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App;

/// <summary>Joins the commands to the rest of the program; nothing here runs before a command needs it.</summary>
internal static class Joined
{
    public static Parts Parts() => new()
    {
        ReadScenario = path => Reading(ScenarioReader.Read(path)),
        ReadDemo = () => Reading(ScenarioReader.ReadText(Demo.Scenario(), Demo.Name, new DemoWeather())),
        ReadWeather = Weather,
        Run = NightRun.Of,
        Compare = (scenario, options, finished, cancel) => Comparison.Of(scenario, options, finished, cancel: cancel),
        Chance = (scenario, options, wish, finished, cancel) => wish.Record is { } read
            ? ChanceRun.OfYears(scenario, options, read, finished, cancel: cancel)
            : ChanceRun.Of(scenario, options, wish.Members, wish.Seed, finished, cancel: cancel),
        Freeze = FreezeOutlook.Of,
        WriteFreezeJson = JsonReport.Write,
        WriteChanceJson = JsonReport.Write,
        WriteCompareJson = JsonReport.Write,
        WriteCompareCsv = CsvReport.Write,
        RunTrip = (scenario, finished, cancel) => TripRun.Of(scenario, finished, cancel: cancel),
        WriteTripJson = JsonReport.Write,
        WriteTripCsv = CsvReport.Write,
        Limits = (scenario, axis, fills, finished, cancel) => LimitChart.Of(scenario, axis, fills, finished, cancel: cancel),
        WriteLimitsJson = JsonReport.Write,
        WriteLimitsCsv = CsvReport.Write,
        Explain = (scenario, at, finished, cancel) => Explanation.Of(scenario, at, finished, cancel: cancel),
        WriteExplainJson = JsonReport.Write,
        WriteJson = JsonReport.Write,
        WriteCsv = SeriesCsv.Write,
        WriteFile = AtomicFile.Write,
        WriteStarter = StarterScenario.Write,
        FindCylinder = Cylinder,
        CylinderNames = () => [.. StandardSize.All.Select(s => s.Name)],
        Propane = Propane,
        Show = Show,
        Cautions = () => Text.Cautions.Short,
    };

    private static ScenarioReading Reading(ReadResult result)
        => new(result.Scenario, [.. result.Problems.Select(p => p.ToString())], result.Warnings) { Options = result.Options };

    private static WeatherResult Weather(string path, WeatherRequest request, IRowSink? sink)
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan);
        return WeatherFile.Read(stream, path, request, sink);
    }

    private static CylinderSpecification? Cylinder(string name) => StandardSize.Find(name) is not { } size ? null : new()
    {
        Name = size.Name,
        Orientation = size.Orientation,
        Volume_m3 = size.Volume_m3,
        OutsideDiameter_m = size.OutsideDiameter_m,
        WallThickness_m = size.WallThickness_m,
        MetalMass_kg = size.ShellMass_kg,
        Tare_kg = size.Tare_kg,
        LegalFill_kg = size.LegalFill_kg,
        Contents_kg = size.LegalFill_kg,
    };

    private static SaturatedPropane Propane(double t_K) => new(
        PropaneSaturation.Pressure_Pa(t_K),
        PropaneSaturation.LiquidDensity_kg_m3(t_K),
        PropaneSaturation.VapourDensity_kg_m3(t_K),
        PropaneSaturation.LatentHeat_J_kg(t_K));

    /// <summary>Apart, so that no screen code is loaded before a screen opens.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Show(Screens.Frame.Opening opening, UnitStyle units, bool color)
        => Screens.Frame.ScreenProgram.Show(opening, units, color);
}
