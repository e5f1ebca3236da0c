using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning.Gauges;

namespace ColdSim.App.Screens.Night;

/// <summary>What the instruments of the cylinder in use should show at the time cursor, the others in a line each.</summary>
internal static class GaugePanel
{
    /// <summary>Draws it below the head.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="view">The night and its cursor.</param>
    /// <param name="keys">The keys of the place.</param>
    public static void Draw(Sheet sheet, NightView view, IReadOnlyList<KeyBinding> keys)
    {
        string[] lines = [.. Lines(view)];
        int shown = Math.Clamp(sheet.Height - NightLayout.FirstStrip - 1, 0, lines.Length);
        for (int i = 0; i < shown; i++)
            sheet.Put(0, NightLayout.FirstStrip + i, CellText.Cut(lines[i], sheet.Width), i == 0 ? CellStyle.Strong : CellStyle.Plain);
        PageElements.Foot(sheet, shown < lines.Length ? "more on a taller screen" : "", keys);
    }

    private static IEnumerable<string> Lines(NightView view)
    {
        ExpectedReadings expected = ExpectedReadings.Of(view.Report, view.Time, null);
        IEnumerable<string> others = expected.Cylinders.Where(c => c.Place != expected.Chosen.Place).Select(c => ExpectedTable.Brief(c, view.Units));
        string title = $"{ExpectedTable.Title(expected.Chosen, expected, view.Units)}:";
        IReadOnlyList<string> table = ExpectedTable.Lines(expected.Chosen, expected, view.Units);
        return others.Prepend(title).Concat(table).Select(CellText.SingleWidth);
    }
}
