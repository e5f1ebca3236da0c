using System.Text;
using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Pictures;
using ColdSim.Files;
using ColdSim.Files.Disk;

namespace ColdSim.App.Text.Markdown;

/// <summary>A report as Markdown: the same sections; pictures as links where they are written beside it, and otherwise in words.</summary>
internal static class MarkdownPage
{
    private const string Mark = "<!-- Made by coldsim -->";

    /// <summary>The file, known by its first line.</summary>
    public static OutputKind Kind { get; } = new("a report", text => text.StartsWith(Mark, StringComparison.Ordinal));

    /// <summary>The text.</summary>
    /// <param name="document">The report.</param>
    /// <param name="pictures">The folder that has its pictures; null for none.</param>
    public static string Of(ReportDocument document, string? pictures)
    {
        StringBuilder to = new(Mark + "\n\n");
        to.Append("# ").Append(Escaped(document.Title)).Append("\n\n").Append(Escaped(document.Setting)).Append('\n');
        foreach (DocumentSection section in document.Sections)
        {
            to.Append("\n## ").Append(Escaped(section.Title)).Append('\n');
            foreach (DocumentBlock block in section.Blocks)
                Write(to, block, pictures);
        }

        return to.Append("\n---\n\n").Append(Escaped(document.Made)).Append('\n').ToString();
    }

    private static void Write(StringBuilder to, DocumentBlock block, string? pictures)
    {
        to.Append('\n');
        switch (block)
        {
            case ParagraphBlock paragraph:
                to.Append(paragraph.Kind == ParagraphKind.Verdict ? $"**{Escaped(paragraph.Text)}**" : Escaped(paragraph.Text)).Append('\n');
                break;
            case PointsBlock points:
                foreach (string point in points.Points)
                    to.Append("- ").Append(Escaped(point)).Append('\n');
                break;
            case ReadingsBlock readings:
                IReadOnlyList<string>[] rows = [.. readings.Readings.Select(r => (IReadOnlyList<string>)[r.Label, r.Value])];
                Table(to, new([new(["Reading"], Left: true), new(["Value"])], rows));
                break;
            case TableBlock table:
                to.Append(Escaped(table.Caption)).Append(":\n\n");
                Table(to, table.Grid);
                break;
            case PictureBlock picture:
                Picture(to, picture.Picture, pictures);
                break;
            case FoldedBlock folded:
                to.Append("### ").Append(Escaped(folded.Title)).Append('\n');
                foreach (DocumentBlock part in folded.Blocks)
                    Write(to, part, pictures);
                break;
            default:
                throw new ArgumentException($"a {block.GetType().Name} cannot be written");
        }
    }

    private static void Picture(StringBuilder to, IPicture picture, string? pictures)
    {
        if (pictures is null)
            to.Append(Escaped(picture.Description)).Append('\n');
        else
            to.Append("![").Append(Escaped(picture.Description)).Append("](<").Append(Address($"{pictures}/{picture.Name}.svg")).Append(">)\n");
    }

    private static void Table(StringBuilder to, TextGrid grid)
    {
        Row(to, HeadingText.Of(grid.Columns));
        to.Append('|').AppendJoin('|', grid.Columns.Select(c => c.Left ? " --- " : " ---: ")).Append("|\n");
        foreach (IReadOnlyList<string> row in grid.Rows)
            Row(to, row);
    }

    private static void Row(StringBuilder to, IEnumerable<string> cells)
        => to.Append("| ").AppendJoin(" | ", cells.Select(c => Escaped(c.Trim()))).Append(" |\n");

    // What begins markup anywhere in a line, so that a name from a file stays a name.
    private static string Escaped(string text)
    {
        StringBuilder escaped = new(text.Length + 16);
        foreach (char c in VisibleText.Of(text))
        {
            if (c is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' or '!' or '~' or '&')
                escaped.Append('\\');
            escaped.Append(c);
        }

        return escaped.ToString();
    }

    private static string Address(string path)
        => VisibleText.Of(path).Replace('\\', '/').Replace("<", "%3C", StringComparison.Ordinal).Replace(">", "%3E", StringComparison.Ordinal);
}
