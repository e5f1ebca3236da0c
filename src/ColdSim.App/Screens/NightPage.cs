namespace ColdSim.App.Screens;

/// <summary>The whole screen as a sheet. Pure.</summary>
internal static class NightPage
{
    public static Sheet Draw(NightView view, int width, int height)
    {
        Sheet sheet = new(width, height);
        ScreenPlan plan = ScreenPlan.For(width, height, CylinderAtCursor.Rows(view));
        if (!plan.Fits)
        {
            TooSmall(sheet);
            return sheet;
        }

        Header(sheet, view);
        switch (view.Page)
        {
            case OpenPage.Help:
                HelpPage.Draw(sheet, view.Row);
                break;
            case OpenPage.Events:
                EventsPage.Draw(sheet, view);
                break;
            default:
                Curves(sheet, plan, view);
                break;
        }

        return sheet;
    }

    private static void TooSmall(Sheet sheet)
    {
        sheet.Put(0, 0, "terminal too small");
        sheet.Put(0, 1, $"now {sheet.Width}x{sheet.Height}, needs {ScreenPlan.LeastWidth}x{ScreenPlan.LeastHeight}");
        sheet.Put(0, 2, "q quits");
    }

    private static void Header(Sheet sheet, NightView view)
    {
        string which = VerdictWords.Which(view);
        sheet.PutBefore(sheet.Width, 0, which);
        sheet.Put(0, 0, Fitting.Cut(Fitting.OneCellEach(view.Report.Scenario.Title), sheet.Width - which.Length - 2), Ink.Strong);
        sheet.Put(0, 1, Fitting.Cut(Fitting.Join(VerdictWords.Parts(view), ", ", sheet.Width), sheet.Width), Ink.Strong);
    }

    private static void Curves(Sheet sheet, ScreenPlan plan, NightView view)
    {
        int top = ScreenPlan.FirstStrip;
        for (int i = 0; i < view.Strips.Count; top += plan.StripRows[i++])
            StripDrawing.Draw(sheet, plan.Place, top, plan.StripRows[i], view.Strips[i], view.Span, view.Minute);
        if (plan.Burner)
            TimeRows.Burner(sheet, plan.Place, plan.BurnerRow, view);
        TimeRows.Events(sheet, plan.Place, plan.EventRow, view);
        TimeRows.Clock(sheet, plan.Place, plan.ClockRow, view);
        if (plan.Side)
            SideReadout.Draw(sheet, sheet.Width - ScreenPlan.SideWidth, view);
        else
            BottomReadout.Draw(sheet, plan, view);
        bool whole = plan.StripRows.All(r => r > 0);
        sheet.Put(0, sheet.Height - 1, Footer(sheet.Width, whole));
    }

    private static string Footer(int width, bool whole) => Fitting.Join(
        [
            .. whole ? (string[])[] : ["more curves on a taller screen"],
            "? help", "q quit", "←→ 10 min", "e/E event", "n/p night", "↑↓ hour", "l list", "u units", "w if the furnace stopped", "Shift ←→ 1 min", "Home/End ends of the night",
        ],
        "  ", width);
}
