using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>
/// A page under docs whose tables are written from the code. Each stands between <c>&lt;!-- generated: NAME --&gt;</c> and <c>&lt;!-- end --&gt;</c>;
/// the prose around them is written by hand.
/// </summary>
internal static class GeneratedPage
{
    /// <summary>The environment variable that makes the tests rewrite the pages instead of comparing them.</summary>
    public const string WriteVariable = "COLDSIM_WRITE_DOCS";

    private const string Begin = "<!-- generated: ", BeginEnd = " -->", End = "<!-- end -->";

    /// <summary>Fails when a part of the page is not as the code writes it; rewrites the page when asked to.</summary>
    /// <param name="page">The file's name below docs.</param>
    /// <param name="parts">What belongs between the markers, by their name: all of the page's, and no other.</param>
    public static void AssertCurrent(string page, IReadOnlyDictionary<string, string> parts)
    {
        string path = DocPage.PathOf(page);
        string written = File.ReadAllText(path).ReplaceLineEndings("\n");
        string current = Renew(written, parts);
        if (Environment.GetEnvironmentVariable(WriteVariable) == "1")
        {
            if (current != written)
                File.WriteAllText(path, current);
        }
        else
            Assert.Equal(current, written);
    }

    /// <summary>The page with its parts as they ought to be.</summary>
    /// <exception cref="InvalidOperationException">Its markers are not those of the parts, or one has no end.</exception>
    public static string Renew(string page, IReadOnlyDictionary<string, string> parts)
    {
        List<string> lines = [];
        HashSet<string> seen = [];
        bool inside = false;
        foreach (string line in page.Split('\n'))
        {
            if (line.StartsWith(Begin, StringComparison.Ordinal) && line.EndsWith(BeginEnd, StringComparison.Ordinal))
            {
                string name = line[Begin.Length..^BeginEnd.Length];
                if (inside || !seen.Add(name) || !parts.TryGetValue(name, out string? part))
                    throw new InvalidOperationException($"'{line}' stands inside another part, twice, or is written by nothing.");
                lines.Add(line);
                lines.AddRange(part.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'));
                inside = true;
            }
            else if (line == End)
            {
                inside = inside ? false : throw new InvalidOperationException($"'{End}' ends nothing.");
                lines.Add(line);
            }
            else if (!inside)
                lines.Add(line);
        }
        string[] missing = [.. parts.Keys.Where(p => !seen.Contains(p))];
        if (inside || missing.Length > 0)
            throw new InvalidOperationException(inside ? $"The last part has no '{End}'." : $"The page lacks the parts {string.Join(", ", missing)}.");
        return string.Join('\n', lines);
    }
}
