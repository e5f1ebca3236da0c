using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Pages;

/// <summary>Draws a page that is only text.</summary>
internal static class TextPage
{
    private const int HeadAndFoot = 3;

    /// <summary>Lines that fit a page of a height.</summary>
    public static int RowsOf(int height) => Math.Max(1, height - HeadAndFoot);

    public static Sheet Draw(
        int width, int height, string title, string beside, IReadOnlyList<TextLine> lines, ScrolledText scroll,
        IEnumerable<KeyBinding> keys)
    {
        Sheet sheet = new(width, height);
        PageElements.Head(sheet, title, beside);
        int rows = RowsOf(height);
        scroll.Draw(sheet, 2, rows, lines);
        PageElements.Foot(sheet, scroll.Position(rows, lines), keys);
        return sheet;
    }

    /// <summary>One sentence instead of a page.</summary>
    public static Sheet Sentence(int width, int height, string title, string text, IEnumerable<KeyBinding> keys)
    {
        Sheet sheet = new(width, height);
        PageElements.Head(sheet, title, "");
        PageElements.Paragraph(sheet, 2, text, 6);
        PageElements.Foot(sheet, "", keys);
        return sheet;
    }
}

/// <summary>A line of a page of text.</summary>
/// <param name="Text">The text.</param>
/// <param name="Heading">Whether it is a heading.</param>
internal readonly record struct TextLine(string Text, bool Heading = false)
{
    /// <summary>The sheet of a picture of which the line is a row; null for plain text.</summary>
    public Sheet? Picture { get; init; }

    /// <summary>Which row of the picture it is.</summary>
    public int PictureRow { get; init; }

    /// <summary>Sections one below the other, a blank line between.</summary>
    /// <remarks>The first has a heading of its own here, because its title is in the page's head.</remarks>
    public static IReadOnlyList<TextLine> Of(IEnumerable<TextSection> sections) =>
    [
        .. sections.SelectMany((s, i) => (IEnumerable<TextLine>)
        [
            .. i == 0 ? Array.Empty<TextLine>() : [new TextLine("")],
            new(i == 0 ? "In one sentence" : s.Title, true),
            .. s.Lines.Select(l => new TextLine(l)),
        ]),
    ];
}

/// <summary>The part of a text that is shown.</summary>
/// <param name="First">Its first line.</param>
/// <param name="Column">Its first column.</param>
/// <param name="Rows">How many lines fit.</param>
internal sealed record ScrolledText(int First = 0, int Column = 0, int Rows = 20)
{
    private const int Widest = 80;

    public ScrolledText Update(PageMessage message, IReadOnlyList<TextLine> lines) => message switch
    {
        PageMessage.Rows rows => At(First + rows.Count, lines),
        PageMessage.Pages pages => At(First + pages.Count * Math.Max(1, Rows - 1), lines),
        PageMessage.First => this with { First = 0, Column = 0 },
        PageMessage.Last => At(lines.Count, lines),
        PageMessage.NextEvent next => Heading(next.Direction, lines) is { } at ? At(at, lines) : this,
        PageMessage.Step step => this with { Column = Math.Clamp(Column + step.Minutes, 0, Widest - 20) },
        _ => this,
    };

    public void Draw(Sheet sheet, int top, int rows, IReadOnlyList<TextLine> lines)
    {
        int first = Math.Clamp(First, 0, Math.Max(0, lines.Count - rows));
        for (int i = first; i < Math.Min(lines.Count, first + rows); i++)
        {
            if (lines[i].Picture is { } picture)
            {
                for (int x = Column; x < picture.Width; x++)
                {
                    Cell cell = picture[x, lines[i].PictureRow];
                    sheet.Put(x - Column, top + i - first, cell.Glyph, cell.Style, cell.Plain);
                }

                continue;
            }

            string text = CellText.SingleWidth(lines[i].Text);
            string shown = CellText.Cut(Column < text.Length ? text[Column..] : "", sheet.Width);
            sheet.Put(0, top + i - first, shown, lines[i].Heading ? CellStyle.Strong : CellStyle.Plain);
        }
    }

    /// <summary>Where in the text the page is, for the last row.</summary>
    public string Position(int rows, IReadOnlyList<TextLine> lines)
    {
        int first = Math.Clamp(First, 0, Math.Max(0, lines.Count - rows));
        return lines.Count <= rows ? "all of it" : first + rows < lines.Count ? $"↓ {lines.Count - first - rows} more below" : "end";
    }

    private ScrolledText At(int first, IReadOnlyList<TextLine> lines)
        => this with { First = Math.Clamp(first, 0, Math.Max(0, lines.Count - Rows)) };

    private int? Heading(int direction, IReadOnlyList<TextLine> lines)
    {
        IEnumerable<int> headings = Enumerable.Range(0, lines.Count).Where(i => lines[i].Heading);
        return direction > 0 ? headings.Where(i => i > First).Cast<int?>().FirstOrDefault()
            : headings.Where(i => i < First).Cast<int?>().LastOrDefault();
    }
}
