using System.Globalization;
using System.Text;
using ColdSim.Files.Disk;

namespace ColdSim.Files.Weather;

/// <summary>Writes a proposed column map as the file that <c>--columns</c> reads.</summary>
internal static class MapText
{
    private const string First = "# A column map, proposed from the headings of ";

    /// <summary>How a file of this kind is known.</summary>
    public static OutputKind Kind => new("a column map", text => text.StartsWith(First, StringComparison.Ordinal));

    /// <summary>Writes it.</summary>
    public static void Write(MapProposal proposal, TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        ArgumentNullException.ThrowIfNull(to);
        ColumnMap map = proposal.Map;
        to.WriteLine($"{First}{VisibleText.Of(Path.GetFileName(proposal.File)).ReplaceLineEndings(" ")}; look at it before you use it.");
        to.WriteLine(map.Time.Count == 1 ? $"time = {Quoted(map.Time[0])}" : $"time = [{string.Join(", ", map.Time.Select(Quoted))}]");
        if (map.Clock is { } clock)
            to.WriteLine($"clock = {Quoted(clock)}");
        if (map.TimeFormat is { } format)
            to.WriteLine($"time_format = {Quoted(format)}");
        if (proposal.NeedsOffset)
            to.WriteLine("# Its times have no offset from UTC: give --offset, or name the zone whose clock they were read from.\n# time_zone = \"America/Denver\"");
        if (map.HeaderLine is { } line)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"header_line = {line}"));
        if (map.Separator is { } separator)
            to.WriteLine($"separator = \"{(separator switch { '\t' => "tab", ColumnMap.Blanks => "blank", _ => separator.ToString() })}\"");
        foreach ((string name, MappedColumn column) in map.Columns)
        {
            string key = name.Replace(' ', '_');
            to.WriteLine($"{key} = {Quoted(column.Heading)}");
            if (column.Unit is { } unit)
                to.WriteLine($"{key}_unit = {Quoted(unit)}");
        }

        foreach (string guess in proposal.Guesses)
            to.WriteLine($"# A guess: {VisibleText.Of(guess).ReplaceLineEndings(" ")}.");
        if (proposal.Unused.Count > 0)
            to.WriteLine($"# Not used: {string.Join(", ", proposal.Unused.Select(u => VisibleText.Of(u).ReplaceLineEndings(" ")))}");
    }

    private static string Quoted(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (char c in text)
        {
            if (c is '"' or '\\')
                quoted.Append('\\').Append(c);
            else if (char.IsControl(c) || char.IsSurrogate(c))
                quoted.Append(CultureInfo.InvariantCulture, $"\\u{(char.IsSurrogate(c) ? '\uFFFD' : c):X4}");
            else
                quoted.Append(c);
        }

        return quoted.Append('"').ToString();
    }
}
