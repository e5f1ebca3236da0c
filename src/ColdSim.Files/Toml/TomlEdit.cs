using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ColdSim.Files.Toml;

/// <summary>Sets one key in a TOML text by splicing.</summary>
internal static class TomlEdit
{
    public static string Set(string text, string[] path, string value)
    {
        DocumentSyntax document = SyntaxParser.Parse(text, "", validate: false);
        string section = string.Join('.', path[..^1]);
        string key = path[^1];
        TableSyntaxBase? table = document.Tables.LastOrDefault(t => Name(t.Name) == section);
        IEnumerable<KeyValueSyntax> pairs = section.Length == 0 ? document.KeyValues : table?.Items ?? Enumerable.Empty<KeyValueSyntax>();
        if (pairs.FirstOrDefault(p => Name(p.Key) == key)?.Value is { } there)
            return text[..there.Span.Offset] + value + text[(there.Span.Offset + there.Span.Length)..];
        string line = $"{key} = {value}\n";
        if (section.Length == 0)
            return line + text;
        if (table is null)
            return text + (text.EndsWith('\n') || text.Length == 0 ? "" : "\n") + $"\n[{section}]\n{line}";
        int end = text.IndexOf('\n', table.OpenBracket?.Span.Offset ?? table.Span.Offset);
        return end < 0 ? $"{text}\n{line}" : text[..(end + 1)] + line + text[(end + 1)..];
    }

    /// <summary>The text without a table, and without the lines of comment right above it.</summary>
    public static string WithoutTable(string text, string name)
    {
        DocumentSyntax document = SyntaxParser.Parse(text, "", validate: false);
        TableSyntaxBase[] tables = [.. document.Tables];
        int index = Array.FindIndex(tables, t => Name(t.Name) == name);
        if (index < 0)
            return text;
        int from = AboveComments(text, Start(tables[index]));
        int to = index + 1 < tables.Length ? AboveComments(text, Start(tables[index + 1])) : text.Length;
        return text[..from] + text[to..];
    }

    private static int Start(TableSyntaxBase table) => table.OpenBracket?.Span.Offset ?? table.Span.Offset;

    private static int AboveComments(string text, int offset)
    {
        int line = text.LastIndexOf('\n', Math.Max(0, offset - 1)) + 1;
        while (line > 0)
        {
            int above = line < 2 ? 0 : text.LastIndexOf('\n', line - 2) + 1;
            if (!text[above..line].TrimStart().StartsWith('#'))
                break;
            line = above;
        }

        return line;
    }

    private static string Name(KeySyntax? key) => key?.ToString().Replace(" ", "", StringComparison.Ordinal) ?? "";
}
