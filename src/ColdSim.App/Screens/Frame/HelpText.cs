using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Frame;

/// <summary>The help: the keys of the place, the keys of every page, and how to read the place.</summary>
/// <param name="Lines">All of it.</param>
/// <param name="Row">The first row that is shown.</param>
internal sealed record HelpText(IReadOnlyList<string> Lines, int Row = 0) : Overlay
{
    private const int KeyWidth = 12;

    // A blank row above, and the last row.
    private const int Around = 2;

    public static HelpText Of(FrameView view) => new(
        [
            $"KEYS OF THIS PAGE, {view.Page.Title.ToUpperInvariant()}", .. ScreenCommand.OfPage(view).SelectMany(Line), "",
            "EVERY PAGE",
            $"  {FrameSheet.PageNumbers(view.Pages),-KeyWidth}a page, F2 to F9 too; each keeps its state",
            .. ScreenCommand.Everywhere.SelectMany(Line), "",
            .. view.Page.Help,
        ]);

    public override void Draw(Sheet sheet, int top)
    {
        int rows = Math.Max(1, sheet.Height - top - Around), first = Math.Clamp(Row, 0, Math.Max(0, Lines.Count - rows));
        for (int i = first; i < Math.Min(Lines.Count, first + rows); i++)
            sheet.Put(0, top + 1 + i - first, CellText.Cut(Lines[i], sheet.Width), Lines[i].StartsWith(' ') ? CellStyle.Plain : CellStyle.Strong);
        string where = first + rows < Lines.Count ? "↓ more below" : "end";
        sheet.Put(0, sheet.Height - 1, CellText.Join([where, "Esc back", "q quit", "↑↓ scroll"], "  ", sheet.Width));
    }

    public override OverlayStep Update(PageMessage message, int rows)
    {
        int page = Math.Max(1, rows - Around);
        int row = message switch
        {
            PageMessage.Rows by => Row + by.Count,
            PageMessage.Pages by => Row + by.Count * Math.Max(1, page - 1),
            PageMessage.First => 0,
            PageMessage.Last => Lines.Count,
            _ => Row,
        };
        return message is PageMessage.Close or PageMessage.Choose ? new(null) : new(this with { Row = Math.Clamp(row, 0, Math.Max(0, Lines.Count - page)) });
    }

    private static IEnumerable<string> Line(ScreenCommand command)
        => CellText.Wrap(command.Words, Sheet.MinWidth - KeyWidth - 2).Select((line, i) => $"  {(i == 0 ? command.Keys : ""),-KeyWidth}{line}");
}
