using System.Text;
using CsvHelper;

namespace ColdSim.Files;

/// <summary>What a heading of a CSV may be.</summary>
/// <param name="Text">The heading; <c>{name}</c> in it is any text.</param>
/// <param name="IsOptional">Whether some files do not have it.</param>
/// <param name="IsRepeated">Whether there may be several.</param>
internal sealed record HeadingPattern(string Text, bool IsOptional = false, bool IsRepeated = false)
{
    private const string Name = "{name}";

    public bool Matches(string heading)
    {
        int at = Text.IndexOf(Name, StringComparison.Ordinal);
        return at < 0 ? heading == Text
            : heading.Length >= Text.Length - Name.Length
                && heading.StartsWith(Text[..at], StringComparison.Ordinal) && heading.EndsWith(Text[(at + Name.Length)..], StringComparison.Ordinal);
    }
}

/// <summary>Tells by its first line whether a CSV is one that this program wrote.</summary>
internal static class CsvHeadings
{
    // More columns than any of our files has.
    private const int Most = 500;

    /// <summary>Whether the first line has the headings, in their order and no other.</summary>
    /// <param name="text">A file's beginning.</param>
    /// <param name="separator">What parts the fields.</param>
    /// <param name="patterns">The headings it may have.</param>
    public static bool Match(string text, char separator, IReadOnlyList<HeadingPattern> patterns)
    {
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        return end > 0 && Fields(text[..end].TrimEnd('\r'), separator) is { Count: > 0 and <= Most } fields && Match(fields, 0, patterns, 0);
    }

    private static bool Match(List<string> fields, int field, IReadOnlyList<HeadingPattern> patterns, int at)
    {
        if (at == patterns.Count)
            return field == fields.Count;
        HeadingPattern pattern = patterns[at];
        if (pattern.IsOptional && Match(fields, field, patterns, at + 1))
            return true;
        return field < fields.Count && pattern.Matches(fields[field])
            && (Match(fields, field + 1, patterns, at + 1) || (pattern.IsRepeated && Match(fields, field + 1, patterns, at)));
    }

    private static List<string>? Fields(string line, char separator)
    {
        try
        {
            using CsvReader csv = CsvReader.Create(Encoding.UTF8.GetBytes(line), new CsvReaderOptions { Separator = separator, HasHeader = false });
            List<string> fields = [];
            for (int i = 0, count = csv.Read() ? csv.FieldCount : 0; i < count; i++)
                fields.Add(csv.GetString(i));
            return fields;
        }
        catch (CsvFormatException)
        {
            return null;
        }
    }
}
