using ColdSim.App.Screens.Frame;

namespace ColdSim.App.Screens.Pages;

/// <summary>Which part of a text is seen.</summary>
/// <param name="First">Its first line.</param>
/// <param name="Aside">Its first column.</param>
/// <param name="Rows">How many lines there is room for.</param>
internal sealed record ScrolledText(int First = 0, int Aside = 0, int Rows = 20)
{
    /// <summary>Keys for the last row.</summary>
    public const string Keys = "↑↓ scroll";

    private const int Widest = 80;

    public ScrolledText After(PageMessage message, IReadOnlyList<TextLine> lines) => message switch
    {
        PageMessage.Rows rows => At(First + rows.Count, lines),
        PageMessage.Pages pages => At(First + pages.Count * Math.Max(1, Rows - 1), lines),
        PageMessage.First => this with { First = 0, Aside = 0 },
        PageMessage.Last => At(lines.Count, lines),
        PageMessage.NextEvent next => Heading(next.Direction, lines) is { } at ? At(at, lines) : this,
        PageMessage.Step step => this with { Aside = Math.Clamp(Aside + step.Minutes, 0, Widest - 20) },
        _ => this,
    };

    public void Draw(Sheet sheet, int top, int rows, IReadOnlyList<TextLine> lines)
    {
        int first = Math.Clamp(First, 0, Math.Max(0, lines.Count - rows));
        for (int i = first; i < Math.Min(lines.Count, first + rows); i++)
        {
            string text = Fitting.OneCellEach(lines[i].Text);
            sheet.Put(0, top + i - first, Fitting.Cut(Aside < text.Length ? text[Aside..] : "", sheet.Width), lines[i].Heading ? Ink.Strong : Ink.Plain);
        }
    }

    /// <summary>What the last row says of where one is.</summary>
    public string Where(int rows, IReadOnlyList<TextLine> lines)
    {
        int first = Math.Clamp(First, 0, Math.Max(0, lines.Count - rows));
        return lines.Count <= rows ? "all of it" : first + rows < lines.Count ? $"↓ {lines.Count - first - rows} more below" : "end";
    }

    private ScrolledText At(int first, IReadOnlyList<TextLine> lines) => this with { First = Math.Clamp(first, 0, Math.Max(0, lines.Count - Rows)) };

    private int? Heading(int direction, IReadOnlyList<TextLine> lines)
    {
        IEnumerable<int> headings = Enumerable.Range(0, lines.Count).Where(i => lines[i].Heading);
        return direction > 0 ? headings.Where(i => i > First).Cast<int?>().FirstOrDefault() : headings.Where(i => i < First).Cast<int?>().LastOrDefault();
    }
}
