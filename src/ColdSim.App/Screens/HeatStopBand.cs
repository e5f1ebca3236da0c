using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Planning.Freezing;

namespace ColdSim.App.Screens;

/// <summary>The answer to "if the furnace stopped now", over the lower rows of the nights.</summary>
internal static class HeatStopBand
{
    // The header, and two rows of the curves.
    private const int LeastAbove = 4;

    /// <param name="sheet">The nights.</param>
    /// <param name="side">Whether the readout stands beside the curves; it is left to be seen, with its cautions.</param>
    /// <param name="view">Whose they are.</param>
    /// <param name="left">The answer.</param>
    public static void Draw(Sheet sheet, bool side, NightView view, Figures<HeatStop> left)
    {
        int width = side ? sheet.Width - ScreenPlan.SideWidth : sheet.Width;
        IReadOnlyList<string> lines = Wrap.Lines(Fitting.OneCellEach(Text(view, left)), width);
        int rows = Math.Min(lines.Count, sheet.Height - 2 - LeastAbove), top = sheet.Height - 1 - rows;
        sheet.Put(0, top - 1, "── if the furnace stopped now ".PadRight(width, '─'), Ink.Strong);
        for (int i = 0; i < rows; i++)
        {
            string line = i == rows - 1 && rows < lines.Count ? lines[i] + " …" : lines[i];
            sheet.Put(0, top + i, Fitting.Cut(line, width).PadRight(width));
        }

        sheet.Put(0, sheet.Height - 1, new string(' ', sheet.Width));
        sheet.Put(0, sheet.Height - 1, Fitting.Join([left.Wanted is null ? "Esc close" : "Esc stop", "? help", "q quit", "u units", "←→ closes it and moves on"], "  ", sheet.Width));
    }

    private static string Text(NightView view, Figures<HeatStop> left)
        => left.Value is { } stop ? FreezeSentence.If(stop, view.Units) : left.Wanted is not null ? "Working out how long is left…" : left.Say;
}
