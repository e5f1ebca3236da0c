namespace ColdSim.Files.Weather;

/// <summary>What parts the fields of a table.</summary>
internal static class Separators
{
    private static readonly char[] Known = [',', ';', '\t', '|'];

    /// <summary>The sign that stands most often outside quotes and brackets; a comma where none does.</summary>
    public static char Of(string line)
    {
        int[] counts = new int[Known.Length];
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
                quoted = !quoted;
            else if (!quoted && Array.IndexOf(Known, c) is var i and >= 0)
                counts[i]++;
        }
        return Known[Array.IndexOf(counts, counts.Max())];
    }
}
