using ColdSim.Files.Scenarios;

namespace ColdSim.Tests.Files;

/// <summary>The starter scenario on the disk.</summary>
internal static class Starter
{
    /// <summary>Writes it and the weather beside it, whose path is returned.</summary>
    public static string Write(string path)
    {
        foreach ((string file, string text) in StarterScenario.FilesOf(path))
            File.WriteAllText(file, text);
        return StarterScenario.FilesOf(path)[0].Path;
    }
}
