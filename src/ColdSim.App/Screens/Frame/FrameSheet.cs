using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Frame;

/// <summary>The whole screen as a sheet: a row of pages, and the open one below.</summary>
internal static class FrameSheet
{
    /// <summary>Rows that the frame takes.</summary>
    public const int Rows = 1;

    public const int MinWidth = Sheet.MinWidth;
    public const int MinHeight = Sheet.MinHeight + Rows;

    private const int LongestName = 12;

    public static Sheet Draw(FrameView view, int width, int height)
    {
        Sheet sheet = new(width, height);
        if (!Fits(view, width, height))
        {
            (int Width, int Height) least = view.Page.Least;
            sheet.Put(0, 0, "terminal too small");
            sheet.Put(0, 1, $"now {sheet.Width}x{sheet.Height}, needs {least.Width}x{least.Height + Rows}");
            sheet.Put(0, 2, "q quits");
            return sheet;
        }

        foreach ((int x, string text, int page) in Names(view, width))
            sheet.Put(x, 0, text, page == view.Open ? CellStyle.Strong : CellStyle.Plain);
        if (view.Over is { } over)
            over.Draw(sheet, Rows);
        else if (view.BlockingJob is { } running)
            DrawJob(sheet, view, running);
        else
            DrawPage(sheet, view);
        return sheet;
    }

    public static bool Fits(FrameView view, int width, int height) => width >= view.Page.Least.Width && height >= view.Page.Least.Height + Rows;

    /// <summary>The page whose name is at a column of the first row; null for none.</summary>
    public static IPage? PageAt(FrameView view, int column, int width)
        => Names(view, width).Where(n => column >= n.X && column < n.X + n.Text.Length).Select(n => view.Pages[n.Page]).FirstOrDefault();

    /// <summary>
    /// Brackets around the open one, an ellipsis after one whose job runs; the others' names are cut where they do not all fit, the first one's, which says the
    /// verdict, only where that is not enough.
    /// </summary>
    private static IEnumerable<(int X, string Text, int Page)> Names(FrameView view, int width)
    {
        int[] pages = [.. Enumerable.Range(0, view.Pages.Count).Where(i => view.Pages[i].IsInRow || i == view.Open)];
        string[] names = [];
        foreach ((int first, int others) in Cuts)
        {
            names = [.. pages.Select(i => Name(view, i, i == 0 ? first : others))];
            if (names.Sum(n => n.Length) <= width)
                break;
        }

        int x = 0;
        for (int i = 0; i < names.Length; i++)
        {
            yield return (x, names[i], pages[i]);
            x += names[i].Length;
        }
    }

    // Letters of the first name and of the others.
    private static IEnumerable<(int First, int Others)> Cuts
        => Enumerable.Range(0, LongestName + 1).Select(cut => (LongestName, LongestName - cut))
            .Concat(Enumerable.Range(1, LongestName).Select(cut => (LongestName - cut, 0)));

    private static string Name(FrameView view, int page, int letters)
    {
        IPage named = view.Pages[page];
        string busy = view.Jobs[page] is null ? "" : "…";
        return page == view.Open ? $"[{named.Key} {named.Title}{busy}]" : $" {$"{named.Key} {named.Title[..Math.Min(letters, named.Title.Length)]}".TrimEnd()}{busy} ";
    }

    private static void DrawPage(Sheet sheet, FrameView view)
    {
        Sheet page = view.Page.Draw(sheet.Width, sheet.Height - Rows);
        sheet.Overlay(page, Rows);
        if (page.LastRowContinues)
            sheet.Put(0, sheet.Height - 1, CellText.Join([sheet.Row(sheet.Height - 1).TrimEnd(), PageKeys(view), .. Common], "  ", sheet.Width));
        if (view.Asked is { } asked)
            Ask(sheet, asked);
        else if (LastRow(view) is { } text)
            sheet.Put(0, sheet.Height - 1, CellText.Cut(text, sheet.Width).PadRight(sheet.Width), CellStyle.Strong);
    }

    /// <summary>What the last row says of the row of pages, such as "1-7 pages".</summary>
    private static string PageKeys(FrameView view) => $"{PageNumbers(view.Pages)} pages";

    private static IEnumerable<string> Common => ScreenCommand.Everywhere.Where(c => c.Brief.Length > 0).Select(c => c.Brief);

    // What was just asked for comes before the keys; a file that changed meanwhile is said until it is read.
    private static string? LastRow(FrameView view) => view.Work is { } work ? $"{work.Job.Description}…  Esc stop"
        : view.Notice.Length > 0 ? view.Notice
        : view.ChangedFile is { } file ? $"{CellText.SingleWidth(Path.GetFileName(file))} was changed on the disk.  R read it  ? keys  q quit" : null;

    private static void Ask(Sheet sheet, KeyBinding asked)
    {
        string question = $"{char.ToUpperInvariant(asked.Cost[0])}{asked.Cost[1..]}.";
        sheet.Put(0, sheet.Height - 1, CellText.Cut($"{question} {asked.Keys} again starts it, Esc does not.", sheet.Width).PadRight(sheet.Width), CellStyle.Pointer);
    }

    private static void DrawJob(Sheet sheet, FrameView view, RunningJob running)
    {
        sheet.Put(0, 2, CellText.Cut(running.Job.Description, sheet.Width), CellStyle.Strong);
        sheet.Put(0, 4, CellText.Cut(running.Progress, sheet.Width));
        sheet.Put(0, 6, "Other pages can be looked at meanwhile.");
        sheet.Put(0, sheet.Height - 1, CellText.Join([running.Job.ReturnsPartial ? "Esc stop and show what is done" : "Esc stop", PageKeys(view), "q quit"], "  ", sheet.Width));
    }

    /// <summary>The keys of the pages there are, such as "1-7 9", or "F1-F7 F9" with a letter before each.</summary>
    internal static string PageNumbers(IReadOnlyList<IPage> pages, string before = "")
    {
        char[] keys = [.. pages.Where(p => p.IsInRow).Select(p => p.Key).Order()];
        List<string> runs = [];
        for (int from = 0, to; from < keys.Length; from = to)
        {
            for (to = from + 1; to < keys.Length && keys[to] == keys[to - 1] + 1;)
                to++;
            runs.Add(to - from == 1 ? $"{before}{keys[from]}" : $"{before}{keys[from]}-{before}{keys[to - 1]}");
        }

        return string.Join(' ', runs);
    }
}
