using ColdSim.App.Screens.Tries;
using ColdSim.Files.Disk;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Toml;
using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>What the screen needs to try changes of a scenario and to save them.</summary>
internal static class TryOpening
{
    /// <summary>Where tries of a scenario are saved.</summary>
    /// <param name="file">The scenario's file; null for the demo.</param>
    /// <param name="weather">A weather file in place of the scenario's; null for that.</param>
    /// <param name="host">Where the command runs.</param>
    public static TryFiles Files(string? file, string? weather, Host host)
    {
        string name = file ?? Demo.Name;
        IWeatherSource source = file is null ? new DemoWeather() : new FolderWeatherSource(Path.GetDirectoryName(file) ?? "", host.Files.Open);
        WeatherInstead? instead = ScenarioFile.Instead(weather, host);
        return new(file, host.Files.Write, text => ScenarioReader.ReadText(text, name, source, null, instead), text => new(text, name, source, instead))
        {
            Beside = file is null ? [(Demo.WeatherName, Demo.Weather())] : [],
        };
    }

    /// <summary>The scenario on the bench; null where its file cannot be read once more, such as a pipe.</summary>
    public static Workbench? Bench(string? file, TryFiles files, StartedScenario started, RunReport report, Host host)
        => Text(file, host) is { } text ? new Workbench(files.Open(text), report, Start(started)) : null;

    private static string? Text(string? file, Host host)
    {
        if (file is null)
            return Demo.Scenario();
        if (FileStatus.Of(file) is not { Kind: FileKind.Regular })
            return null;
        try
        {
            using Stream stream = host.Files.Open(file);
            return TomlFile.Read(stream);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Moves a scenario to where the run starts, as its options are.</summary>
    private static Func<Scenario, IReadOnlyList<int>, Scenario> Start(StartedScenario started)
        => started.Latest is not { } latest ? (scenario, _) => scenario
            : (scenario, own) => latest.Start.Applied(scenario, own) with { Errors = started.Scenario.Errors };
}
