namespace ColdSim.App.Screens.Pages;

/// <summary>Draws a page that is only text.</summary>
internal static class TextPage
{
    private const int HeadAndFoot = 3;

    /// <summary>Lines that fit a page of a height.</summary>
    public static int RowsOf(int height) => Math.Max(1, height - HeadAndFoot);

    public static Sheet Draw(int width, int height, string title, string beside, IReadOnlyList<TextLine> lines, ScrolledText scroll, params string[] keys)
    {
        Sheet sheet = new(width, height);
        PageParts.Head(sheet, title, beside);
        int rows = RowsOf(height);
        scroll.Draw(sheet, 2, rows, lines);
        PageParts.Foot(sheet, [scroll.Where(rows, lines), ScrolledText.Keys, "Tab next part", .. keys]);
        return sheet;
    }

    /// <summary>One sentence instead of a page.</summary>
    public static Sheet Sentence(int width, int height, string title, string text, params string[] keys)
    {
        Sheet sheet = new(width, height);
        PageParts.Head(sheet, title, "");
        PageParts.Paragraph(sheet, 2, text, 6);
        PageParts.Foot(sheet, keys);
        return sheet;
    }
}
