using ColdSim.Files;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary>Reads a scenario for a command: warnings go to standard error, problems end the command.</summary>
internal static class ScenarioFile
{
    public static Scenario Read(string path, Host host) => Good(path, host).Scenario!;

    /// <summary>The same with the scenario's options; its scenario is there.</summary>
    public static ScenarioReading Good(string path, Host host)
    {
        if (!File.Exists(path))
            throw CommandFault.Input(Missing(path));
        ScenarioReading reading = host.Parts.ReadScenario(path);
        Take(reading, host);
        return reading;
    }

    public static Scenario Take(ScenarioReading reading, Host host)
    {
        foreach (string warning in reading.Warnings)
            host.Error.WriteLine($"warning: {warning}");
        if (reading.Problems.Count == 0 && reading.Scenario is { } scenario)
            return scenario;
        string count = reading.Problems.Count == 1 ? "1 problem" : $"{reading.Problems.Count} problems";
        throw CommandFault.Input([.. reading.Problems, $"coldsim: {count}; nothing was run"]);
    }

    private static string Missing(string path)
    {
        if (Directory.Exists(path))
            return $"coldsim: '{path}' is a folder, not a scenario file";
        string? folder = Path.GetDirectoryName(path);
        string here = string.IsNullOrEmpty(folder) ? "." : folder;
        string line = $"coldsim: there is no file '{path}'";
        IEnumerable<string> names = Directory.Exists(here) ? Directory.EnumerateFiles(here, "*.toml").Select(f => Path.GetFileName(f)) : [];
        return NearestName.Of(Path.GetFileName(path), names) is { } nearest ? $"{line}; did you mean '{Path.Combine(folder ?? "", nearest)}'?" : line;
    }
}
