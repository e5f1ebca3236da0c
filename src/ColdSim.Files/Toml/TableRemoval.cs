using System.Text;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ColdSim.Files.Toml;

/// <summary>Takes a table out of a TOML text.</summary>
internal static class TableRemoval
{
    /// <summary>The text without a table, and without the lines of comment that were written with it; all other comments stay.</summary>
    /// <param name="text">A text that parses.</param>
    /// <param name="name">The table.</param>
    /// <param name="isOurs">Whether a line of comment was written with the table.</param>
    public static string WithoutTable(string text, string name, Func<string, bool> isOurs)
    {
        DocumentSyntax document = SyntaxParser.Parse(text, "", validate: false);
        TableSyntaxBase? table = document.Tables.FirstOrDefault(t => Name(t.Name) == name);
        if (table is null)
            return text;
        int from = LineStart(text, Start(table));
        while (from > 0 && LineStart(text, from - 1) is int above && isOurs(text[above..from].Trim()))
            from = above;

        // From the header to the end of the last key only whole lines of comment stay.
        int to = table.Items.Select(i => i.Span.Offset + i.Span.Length).DefaultIfEmpty(Start(table)).Max();
        to = text.IndexOf('\n', Math.Max(Start(table), to - 1)) is >= 0 and int end ? end + 1 : text.Length;
        StringBuilder kept = new(text[..from]);
        for (int line = from; line < to;)
        {
            int next = text.IndexOf('\n', line) is >= 0 and int feed ? feed + 1 : text.Length;
            string written = text[line..next].Trim();
            if (written.StartsWith('#') && !isOurs(written) && !table.Items.Any(i => line > i.Span.Offset && line < i.Span.Offset + i.Span.Length))
                kept.Append(text, line, next - line);
            line = next;
        }

        return kept.Append(text, to, text.Length - to).ToString();
    }

    private static int Start(TableSyntaxBase table) => table.OpenBracket?.Span.Offset ?? table.Span.Offset;

    private static int LineStart(string text, int offset) => offset == 0 ? 0 : text.LastIndexOf('\n', offset - 1) + 1;

    private static string Name(KeySyntax? key) => key?.ToString().Replace(" ", "", StringComparison.Ordinal) ?? "";
}
