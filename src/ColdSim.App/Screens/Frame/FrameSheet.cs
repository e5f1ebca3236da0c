namespace ColdSim.App.Screens.Frame;

/// <summary>The whole screen as a sheet: a row of pages, and the open one below. Pure.</summary>
internal static class FrameSheet
{
    /// <summary>Rows that the frame takes.</summary>
    public const int Rows = 1;

    public const int LeastWidth = ScreenPlan.LeastWidth;
    public const int LeastHeight = ScreenPlan.LeastHeight + Rows;

    private const int LongestName = 12;

    public static Sheet Draw(FrameView view, int width, int height)
    {
        Sheet sheet = new(width, height);
        if (!Fits(width, height))
        {
            sheet.Put(0, 0, "terminal too small");
            sheet.Put(0, 1, $"now {sheet.Width}x{sheet.Height}, needs {LeastWidth}x{LeastHeight}");
            sheet.Put(0, 2, "q quits");
            return sheet;
        }

        foreach ((int x, string text, int page) in Names(view, width))
            sheet.Put(x, 0, text, page == view.Open ? Ink.Strong : Ink.Plain);
        if (view.HelpRow is { } row)
            FrameHelp.Draw(sheet, view, row);
        else if (view.Waiting is { } job)
            Working(sheet, view, job);
        else
            Page(sheet, view);
        return sheet;
    }

    public static bool Fits(int width, int height) => width >= LeastWidth && height >= LeastHeight;

    /// <summary>The page whose name stands in a column of the first row; null where none does.</summary>
    public static IPage? PageAt(FrameView view, int column, int width)
        => Names(view, width).Where(n => column >= n.X && column < n.X + n.Text.Length).Select(n => view.Pages[n.Page]).FirstOrDefault();

    /// <summary>Brackets around the open one, an ellipsis after one that is being worked out; the others' names are cut where they do not all fit.</summary>
    private static IEnumerable<(int X, string Text, int Page)> Names(FrameView view, int width)
    {
        string[] names = [];
        for (int letters = LongestName; letters >= 0; letters--)
        {
            names = [.. view.Pages.Select((_, i) => Name(view, i, letters))];
            if (names.Sum(n => n.Length) <= width)
                break;
        }

        int x = 0;
        for (int i = 0; i < names.Length; i++)
        {
            yield return (x, names[i], i);
            x += names[i].Length;
        }
    }

    private static string Name(FrameView view, int page, int letters)
    {
        IPage named = view.Pages[page];
        string busy = view.Jobs[page] is null ? "" : "…";
        return page == view.Open ? $"[{named.Key} {named.Title}{busy}]" : $" {$"{named.Key} {named.Title[..Math.Min(letters, named.Title.Length)]}".TrimEnd()}{busy} ";
    }

    private static void Page(Sheet sheet, FrameView view)
    {
        Sheet page = view.Page.Draw(sheet.Width, sheet.Height - Rows);
        sheet.Lay(page, Rows);
        if (page.LastRowGoesOn)
            sheet.Put(0, sheet.Height - 1, Fitting.Join([sheet.Row(sheet.Height - 1).TrimEnd(), PageKeys(view), "u units"], "  ", sheet.Width));
    }

    /// <summary>What the last row says of the row of pages, such as "1-7 pages".</summary>
    private static string PageKeys(FrameView view) => $"{PageNumbers.Of(view.Pages)} pages";

    private static void Working(Sheet sheet, FrameView view, PageJob job)
    {
        sheet.Put(0, 2, Fitting.Cut(job.Work.What, sheet.Width), Ink.Strong);
        sheet.Put(0, 4, Fitting.Cut(job.Progress, sheet.Width));
        sheet.Put(0, 6, "Other pages can be looked at meanwhile.");
        sheet.Put(0, sheet.Height - 1, Fitting.Join([job.Work.GivesPart ? "Esc stop and show what is done" : "Esc stop", PageKeys(view), "q quit"], "  ", sheet.Width));
    }
}
