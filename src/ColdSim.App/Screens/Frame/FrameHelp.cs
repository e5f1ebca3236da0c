namespace ColdSim.App.Screens.Frame;

/// <summary>The help of a page that has no help page of its own: its own keys, then those of every page.</summary>
internal static class FrameHelp
{
    /// <summary>What works on every page; the night page's help has them too.</summary>
    public static IReadOnlyList<string> Everywhere(IReadOnlyList<IPage> pages) =>
    [
        "EVERY PAGE",
        $"  {$"{PageNumbers.Of(pages)} or {PageNumbers.Of(pages, "F")}",-21} another page; each stays as it was",
        "  Esc                   stops what is being worked out",
        "  u                     US or metric units",
        "  ? or Esc              close help; Esc never quits",
        "  q, Ctrl-Q, Ctrl-C     quit",
        "  mouse click           on a page's name opens it",
    ];

    public static IReadOnlyList<string> Lines(FrameView view) => [.. view.Page.Help ?? [], "", .. Everywhere(view.Pages)];

    /// <summary>Rows of help that a screen of a height shows.</summary>
    public static int RowsOf(int height) => Math.Max(1, height - 3);

    public static void Draw(Sheet sheet, FrameView view, int row)
    {
        IReadOnlyList<string> lines = Lines(view);
        int rows = RowsOf(sheet.Height), first = Math.Min(row, Math.Max(0, lines.Count - rows));
        for (int i = first; i < Math.Min(lines.Count, first + rows); i++)
            sheet.Put(0, 2 + i - first, Fitting.Cut(lines[i], sheet.Width), lines[i].StartsWith(' ') ? Ink.Plain : Ink.Strong);
        string where = first + rows < lines.Count ? "↓ more below" : "end of help";
        sheet.Put(0, sheet.Height - 1, Fitting.Join([where, "? or Esc back", "q quit", "↑↓ scroll"], "  ", sheet.Width));
    }
}
