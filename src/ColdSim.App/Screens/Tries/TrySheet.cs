using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Tries;

/// <summary>Draws the list of what can be turned.</summary>
internal static class TrySheet
{
    private const int NameWidth = 17;

    /// <summary>The list, a row each, with what is tried in bold.</summary>
    /// <param name="state">What is tried.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    public static Sheet Draw(TryState state, int width, int height)
    {
        Sheet sheet = new(width, height);
        int rows = Math.Max(1, height - 1), first = PageElements.FirstRow(state.Row, rows, state.Bench.Adjustments.Count);
        string heading = state.IsWorking ? "working…" : state.IsOpen ? "TRY IT" : "t: try it";
        sheet.Put(0, 0, heading.PadRight(width), state.IsOpen ? CellStyle.Strong : CellStyle.Plain);
        for (int i = first; i < Math.Min(state.Bench.Adjustments.Count, first + rows); i++)
            Row(sheet, 1 + i - first, Line(state, i, width), state, i);
        return sheet;
    }

    /// <summary>The chosen row alone, for a screen without room for the list.</summary>
    public static string ChosenLine(TryState state, int width) => Line(state, state.Row, width);

    private static void Row(Sheet sheet, int y, string line, TryState state, int i)
        => sheet.Put(0, y, line.PadRight(sheet.Width), state.IsOpen && i == state.Row ? CellStyle.Pointer
            : state.Now[state.Bench.Adjustments[i].Id] is not null ? CellStyle.Strong : CellStyle.Plain);

    private static string Line(TryState state, int i, int width)
    {
        Adjustment adjustment = state.Bench.Adjustments[i];
        bool isChosen = state.IsOpen && i == state.Row, isTried = state.Now[adjustment.Id] is not null;
        string value = isChosen && state.Entry.Length > 0 ? $"{state.Entry}_" : adjustment.Shown(state.Place);
        return CellText.Cut($"{(isChosen ? '>' : isTried ? '*' : ' ')} {adjustment.Name.PadRight(NameWidth)} {value}", width);
    }
}
