using System.Text.RegularExpressions;

namespace ColdSim.Files.Toml;

/// <summary>What to put in the place of a line that does not parse: nothing, or the header it was meant to be.</summary>
internal static partial class BrokenHeader
{
    /// <summary>A line that parses; the keys below a mended header keep their table.</summary>
    public static string Mend(string line)
    {
        Match header = Header().Match(line);
        if (!header.Success)
            return "";
        string name = header.Groups["name"].Value;
        return header.Groups["open"].Length == 2 ? $"[[{name}]]" : $"[{name}]";
    }

    [GeneratedRegex(@"^\s*(?<open>\[{1,2})\s*(?<name>[A-Za-z0-9_-]+(\.[A-Za-z0-9_-]+)*)[^=]*$", RegexOptions.CultureInvariant)]
    private static partial Regex Header();
}
