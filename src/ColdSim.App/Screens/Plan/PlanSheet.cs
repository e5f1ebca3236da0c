using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Tries;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>Draws the page of the plan: verdict, nights, and below them the chosen night's picture or what would help.</summary>
internal static class PlanSheet
{
    /// <summary>The page.</summary>
    public static Sheet Draw(PlanPage page, int width, int height)
    {
        Sheet sheet = new(width, height);
        if (width < PlanLayout.MinWidth || height < PlanLayout.MinHeight)
        {
            sheet.Put(0, 0, "terminal too small");
            sheet.Put(0, 1, $"needs {PlanLayout.MinWidth}x{PlanLayout.MinHeight + 1}");
            return sheet;
        }

        PlanLayout layout = PlanLayout.For(width, height);
        int top = Above(sheet, page, layout);
        int foot = height - 1;
        top = Nights(sheet, page, layout, top, foot);
        Below(sheet, page, layout, top, foot);
        PageElements.Foot(sheet, "", page.Keys);
        return sheet;
    }

    /// <summary>What a click means.</summary>
    public static PageMessage? Click(PlanPage page, int x, int y, int width, int height)
    {
        PlanLayout layout = PlanLayout.For(width, height);
        Sheet scratch = new(width, height);
        int top = Above(scratch, page, layout) + layout.HeadRows;
        (int first, int rows) = Shown(page, layout, top, height - 1);
        if (y >= top && y < top + rows && x < layout.Width)
            return new PageMessage.Rows(first + y - top - page.View.Night);
        return y >= top + rows && layout.HasLower && NightPicture.MinuteAt(x, layout.Width, page.View) is { } minute ? new PageMessage.PointAt(minute) : null;
    }

    // The title, the verdict, and why.
    private static int Above(Sheet sheet, PlanPage page, PlanLayout layout)
    {
        int top = 0;
        if (layout.HasTitle)
        {
            NightReport night = page.View.Current;
            PageElements.Head(sheet, page.Report.Scenario.Title, $"night {night.Number} of {page.Report.Nights.Count}");
            top = 1;
        }

        string verdict = PlanWords.Sentence(page.Report, page.Units), brief = PlanWords.Brief(page.Report, page.Units);
        top = PageElements.Paragraph(sheet, top, Rows(verdict, sheet.Width) <= layout.VerdictRows || layout.HasTitle ? verdict : brief, layout.VerdictRows, CellStyle.Strong);
        if (page.Said is { Length: > 0 } said)
            top = PageElements.Paragraph(sheet, top, said, layout.HasTitle ? 2 : 1, CellStyle.Pointer);
        string why = PlanWords.Why(page.Insight?.Reason, page.Units);
        return layout.ReasonRows == 0 || why.Length == 0 ? top : PageElements.Paragraph(sheet, top, why, layout.ReasonRows);
    }

    private static int Rows(string text, int width) => Wrap.Lines(text, width).Count;

    private static int Nights(Sheet sheet, PlanPage page, PlanLayout layout, int top, int foot)
    {
        IReadOnlyList<string> lines = NightTable.Lines(page.Report, page.Insight?.Margins, page.Units, layout.Width);
        for (int i = 0; i < layout.HeadRows; i++)
            sheet.Put(0, top++, CellText.Cut(lines[i], layout.Width));
        (int first, int rows) = Shown(page, layout, top, foot);
        for (int i = first; i < first + rows; i++)
            Night(sheet, top++, CellText.Cut(lines[2 + i], layout.Width), page.Report.Nights[i], i == page.View.Night);
        return top;
    }

    private static (int First, int Rows) Shown(PlanPage page, PlanLayout layout, int top, int foot)
    {
        int nights = page.Report.Nights.Count, rows = Math.Min(layout.NightRows(foot - top, nights), Math.Max(0, foot - top));
        return (PageElements.FirstRow(page.View.Night, rows, nights), rows);
    }

    // A night that fails differs by its word, by weight and by that word in reverse; the chosen one by its pointer.
    private static void Night(Sheet sheet, int y, string line, NightReport night, bool isChosen)
    {
        bool fails = night.Verdict != Planning.Harms.Verdict.Holds;
        sheet.Put(0, y, line, fails ? CellStyle.Strong : CellStyle.Plain);
        if (NightTable.FailingAt(line) is >= 0 and int at)
            sheet.Put(at, y, NightTable.Fails, CellStyle.StrongPointer);
        if (isChosen)
            sheet.Put(0, y, '>', CellStyle.Strong);
    }

    private static void Below(Sheet sheet, PlanPage page, PlanLayout layout, int top, int foot)
    {
        if (page.Help is { } help)
        {
            RemedySheet.Draw(sheet, page, help, layout.HasLower ? top + 1 : Math.Max(2, top - 3), foot, layout.Width);
            return;
        }

        int rows = foot - top - 1, left = 0, width = layout.Width;
        if (page.Try is { } tried && layout.HasLower && rows > 0)
        {
            int column = PlanLayout.ColumnWidth - 1;
            if (layout.IsWide)
                Column(sheet, tried, width + 1, width, top - page.Report.Nights.Count, foot);
            else if (tried.IsOpen)
                (left, width) = Column(sheet, tried, 0, column, top + 1, foot);
        }
        else if (page.Try is { IsOpen: true } alone)
        {
            sheet.Put(0, foot - 1, TrySheet.ChosenLine(alone, sheet.Width).PadRight(sheet.Width), CellStyle.Pointer);
        }

        if (layout.HasLower && rows > 0 && width >= PlanLayout.LeastPictureWidth)
            sheet.Overlay(NightPicture.Draw(width, rows, page.View, page.AsItIs), top + 1, left);
    }

    // The list of what can be turned, with a rule beside it; what is left of the page for the picture.
    private static (int Left, int Width) Column(Sheet sheet, TryState tried, int left, int rule, int top, int foot)
    {
        top = Math.Max(1, top);
        sheet.Overlay(TrySheet.Draw(tried, PlanLayout.ColumnWidth - 1, foot - top), top, left);
        for (int y = top; y < foot; y++)
            sheet.Put(rule, y, '│');
        return (rule + 1, sheet.Width - rule - 1);
    }
}
