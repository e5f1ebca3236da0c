namespace ColdSim.App.Text.Documents;

/// <summary>The headings of a table's columns in one line each, so that each says by itself what is below it.</summary>
internal static class HeadingText
{
    /// <summary>The headings; one whose first line is blank has that of the column before it.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<TextColumn> columns)
    {
        List<string> headings = [];
        string first = "";
        foreach (TextColumn column in columns)
        {
            bool goesOn = column.Heading.Count > 1 && column.Heading[0].Length == 0;
            first = goesOn ? first : column.Heading.Count > 0 ? column.Heading[0] : "";
            headings.Add(Joined(goesOn ? [first, .. column.Heading] : column.Heading));
        }

        return headings;
    }

    // A word that is parted by a hyphen becomes whole.
    private static string Joined(IEnumerable<string> lines)
    {
        string heading = "";
        foreach (string line in lines.Select(l => l.Trim()).Where(l => l.Length > 0))
            heading = heading.Length == 0 ? line : heading.EndsWith('-') ? heading[..^1] + line : $"{heading} {line}";
        return heading;
    }
}
