using ColdSim.Tests.Files;

namespace ColdSim.Tests.Docs;

/// <summary>A command line as a page writes it.</summary>
internal static class DocsCommand
{
    /// <summary>Its words; quotes hold words together, and the demos are found wherever the test runs.</summary>
    public static string[] Words(string command)
    {
        List<string> words = [];
        string[] parts = command.Split('"');
        for (int i = 0; i < parts.Length; i++)
        {
            if (i % 2 == 1)
                words.Add(parts[i]);
            else
                words.AddRange(parts[i].Split(' ', StringSplitOptions.RemoveEmptyEntries));
        }

        return [.. words.Select(w => w.StartsWith("scenarios/", StringComparison.Ordinal) ? Path.Combine(DocPage.Scenarios, w["scenarios/".Length..]) : w)];
    }
}
