namespace ColdSim.App.Screens.Frame;

/// <summary>The whole screen as a sheet: a row of pages, and the open one below. Pure.</summary>
internal static class FrameSheet
{
    /// <summary>Rows that the frame takes.</summary>
    public const int Rows = 1;

    public const int LeastWidth = ScreenPlan.LeastWidth;
    public const int LeastHeight = ScreenPlan.LeastHeight + Rows;

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

        foreach ((int x, string text, int page) in Names(view))
            sheet.Put(x, 0, text, page == view.Open ? Ink.Strong : Ink.Plain);
        if (view.HelpRow is { } row)
            FrameHelp.Draw(sheet, view, row);
        else if (view.Waiting is { } job)
            Working(sheet, job);
        else
            sheet.Lay(view.Page.Draw(width, height - Rows), Rows);
        return sheet;
    }

    public static bool Fits(int width, int height) => width >= LeastWidth && height >= LeastHeight;

    /// <summary>The page whose name stands in a column of the first row; null where none does.</summary>
    public static IPage? PageAt(FrameView view, int column)
        => Names(view).Where(n => column >= n.X && column < n.X + n.Text.Length).Select(n => view.Pages[n.Page]).FirstOrDefault();

    /// <summary>Brackets around the open one, an ellipsis after one that is being worked out.</summary>
    private static IEnumerable<(int X, string Text, int Page)> Names(FrameView view)
    {
        int x = 0;
        for (int i = 0; i < view.Pages.Count; i++)
        {
            string name = $"{view.Pages[i].Key} {view.Pages[i].Title}{(view.Jobs[i] is null ? "" : "…")}";
            string text = i == view.Open ? $"[{name}]" : $" {name} ";
            yield return (x, text, i);
            x += text.Length;
        }
    }

    private static void Working(Sheet sheet, PageJob job)
    {
        sheet.Put(0, 2, Fitting.Cut(job.Work.What, sheet.Width), Ink.Strong);
        sheet.Put(0, 4, Fitting.Cut(job.Progress, sheet.Width));
        sheet.Put(0, 6, "Other pages can be looked at meanwhile.");
        sheet.Put(0, sheet.Height - 1, Fitting.Join(["Esc stop", "1-6 pages", "q quit"], "  ", sheet.Width));
    }
}
