using ColdSim.Files;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary>A scenario as commands read it: warnings go to standard error, problems end the command.</summary>
internal static class ScenarioFile
{
    // Fifteen years of hours; a longer file is checked whole and thinned to between half as many rows and as many.
    private const int MostRowsToCheck = 1 << 17;

    private const int MostProblemsShown = 100;

    /// <summary>The scenario for a check that runs nothing: of weather with very many rows only some are kept, so that memory does not grow with it.</summary>
    public static Scenario ReadToCheck(string path, Host host, string? weather = null) => Read(path, host, MostRowsToCheck, Instead(weather, host)).Scenario!;

    public static Scenario Read(string path, Host host, string? weather = null) => ReadWithOptions(path, host, weather).Scenario!;

    /// <summary>The same with a window of other weather.</summary>
    public static Scenario Read(string path, Host host, WeatherInstead? weather) => Read(path, host, null, weather).Scenario!;

    /// <summary>The same with the scenario's options; its scenario is there.</summary>
    public static ReadResult ReadWithOptions(string path, Host host, string? weather = null) => Read(path, host, null, Instead(weather, host));

    /// <summary>A weather file in place of the scenario's; null where none is given.</summary>
    /// <exception cref="CommandFault">There is no such file.</exception>
    public static WeatherInstead? Instead(string? weather, Host host) => weather is null ? null
        : host.Files.Exists(weather) ? new WeatherInstead(weather, new FolderWeatherSource("", host.Files.Open))
        : throw CommandFault.Input($"coldsim: --weather: there is no file '{Quote.OfPath(weather)}'");

    private static ReadResult Read(string path, Host host, int? mostRows, WeatherInstead? weather)
    {
        if (!host.Files.Exists(path))
            throw CommandFault.Input(Missing(path, host));

        // Nothing is written over the log either, whether or not this run reads it.
        host.Files.Reads.Add(LogFile.PathOf(path));
        return Checked(ScenarioReader.Read(path, host.Files.Open, mostRows, weather), host);
    }

    /// <summary>The demo that is built in.</summary>
    public static ReadResult Demo(Host host) => Checked(ScenarioReader.ReadText(App.Demo.Scenario(), App.Demo.Name, new DemoWeather()), host);

    /// <summary>The scenario with another number of nights; refused where stops or refills say how long it is.</summary>
    public static Scenario WithNights(Scenario scenario, int nights) => scenario.Trip is null
        ? scenario with { Nights = nights }
        : throw CommandFault.Input("coldsim: --nights: the stops and refills of the file say how long it runs; change them there");

    /// <summary>What was assumed because the scenario does not say it, a line each.</summary>
    public static IEnumerable<string> Assumed(Scenario scenario) => scenario.Assumptions.Select(a => $"assumed: {a}");

    private static ReadResult Checked(ReadResult read, Host host)
    {
        foreach (string warning in read.Warnings)
            host.Notices.Add($"warning: {warning}");
        if (read.Problems.Count == 0 && read.Scenario is not null)
            return read;
        string count = read.Problems.Count switch
        {
            1 => "1 problem",
            > MostProblemsShown => $"{read.Problems.Count} problems, of which the first {MostProblemsShown} are shown",
            _ => $"{read.Problems.Count} problems",
        };
        throw CommandFault.Input([.. read.Problems.Take(MostProblemsShown).Select(p => p.ToString()), $"coldsim: {count}; nothing was run"]);
    }

    private static string Missing(string path, Host host)
    {
        if (host.Files.FolderExists(path))
            return $"coldsim: '{Quote.OfPath(path)}' is a folder, not a scenario file";
        string? folder = Path.GetDirectoryName(path);
        string here = string.IsNullOrEmpty(folder) ? "." : folder;
        string line = $"coldsim: there is no file '{Quote.OfPath(path)}'";
        IEnumerable<string> names = host.Files.FolderExists(here) ? host.Files.In(here).Select(f => Path.GetFileName(f)).Where(f => f.EndsWith(".toml", StringComparison.Ordinal)) : [];
        return NearestName.Of(Path.GetFileName(path), names) is { } nearest ? $"{line}; did you mean '{Path.Combine(folder ?? "", nearest)}'?" : line;
    }
}
