using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>The help of the nights: keys, how to read the curves, event letters and cautions.</summary>
internal static class NightHelp
{
    private const int LineWidth = Sheet.MinWidth;

    private static readonly string[] Keys =
    [
        "KEYS",
        "  Left, Right           10 minutes; with Shift or Ctrl 1",
        "  Up, Down, PgUp, PgDn  an hour back, an hour on",
        "  Home, End             start and end of the night",
        "  e, E or Tab           next, previous event of the run",
        "  n, p                  next, previous night",
        "  l                     list of the night's events",
        "  w                     if the furnace stopped now: how long",
        "                        until freezing; Esc closes it",
        "  digits, F keys        another page, as the top row names",
        "  u                     US or metric units",
        "  ? or Esc              close help; Esc never quits",
        "  q, Ctrl-Q, Ctrl-C     quit",
        "  mouse click           puts the time cursor there",
        "",
        "READING THE CURVES",
        "  ⠒⠒⠒ no gaps, ⠒ ⠒ dashed, ⠡⠡⠡ speckled; each name is",
        "  on the left and where its curve ends.",
        "  demand      gas asked for, as gross heat; the highest",
        "              in each column",
        "  given       gas got; less than demand is running short",
        "  can give    what cylinder and regulator can give now at",
        "              full delivery pressure",
        "  endless     what the cylinder could give without end in",
        "              this weather at this fill",
        "  ↑           the curve runs above the strip",
        "  burner lit  part of the time: blank never, . little,",
        "              - half, + most, # always; then its hours",
        "  Pressures are gauge. Axes are one for all nights.",
        "LETTERS OF WATER, COLD AND THE 12 V SIDE",
        "  w I m  water begins to freeze, is all ice, has thawed",
        "  d k    damp settles on a cold surface, 50 °F inside",
        "  B b z  battery flat, voltage back, so no gas is asked for",
        "  E e X  generator starts, stops, has no gas",
        "  N n K  battery freezes, has thawed, too cold to give",
        "  A U    the cold wakes somebody, resets given up",
        "",
    ];

    // They share a line, so that all of the help still fits two columns.
    private static readonly ReportedKind[] SharedLines =
    [
        ReportedKind.WaterFreezes, ReportedKind.WaterSolid, ReportedKind.WaterThawed, ReportedKind.DampSettles, ReportedKind.VoltageGone, ReportedKind.VoltageBack,
        ReportedKind.GeneratorStarts, ReportedKind.GeneratorStops, ReportedKind.GeneratorStarved, ReportedKind.InsideFifty, ReportedKind.ShortStops,
        ReportedKind.WokenByCold, ReportedKind.ResetsGivenUp, ReportedKind.BatteryFreezes, ReportedKind.BatteryThawed,
        ReportedKind.BatteryCutOut,
    ];

    private static string[] LettersIn(UnitStyle units) =>
    [
        "EVENT LETTERS",
        .. EventKinds.Listed.Where(k => !SharedLines.Contains(k.Kind)).OrderByDescending(w => w.Rank).Select(w => $"  {w.Letter}  {units.InOwn(w.Sentence)}"),
        "",
        "CAUTIONS",
        .. units.InOwn(Cautions.Lines).SelectMany(c => CellText.Wrap(c, LineWidth - 4).Select((line, i) => (i == 0 ? "  - " : "    ") + line)),
    ];

    /// <summary>All of it.</summary>
    public static IReadOnlyList<string> Lines(UnitStyle units) => [.. units.InOwn(Keys), .. LettersIn(units)];

    public static void Draw(Sheet sheet, int row, UnitStyle units)
    {
        string[] keys = [.. units.InOwn(Keys)], letters = LettersIn(units);
        string[] all = [.. keys, .. letters];
        int rows = sheet.Height - 4;
        if (sheet.Width >= 2 * LineWidth && rows >= Math.Max(keys.Length, letters.Length))
        {
            Column(sheet, 0, keys, 0, rows);
            Column(sheet, sheet.Width / 2, letters, 0, rows);
            Footer(sheet, "end of help");
            return;
        }

        int first = Math.Min(row, Math.Max(0, all.Length - rows));
        Column(sheet, 0, all, first, rows);
        Footer(sheet, first + rows < all.Length ? "↓ more below, cautions at the end" : "end of help");
    }

    private static void Column(Sheet sheet, int x, string[] lines, int first, int rows)
    {
        for (int i = first; i < Math.Min(lines.Length, first + rows); i++)
            sheet.Put(x, 3 + i - first, lines[i], lines[i].StartsWith(' ') ? CellStyle.Plain : CellStyle.Strong);
    }

    private static void Footer(Sheet sheet, string where)
        => sheet.Put(0, sheet.Height - 1, CellText.Join([where, "? or Esc back", "q quit", "↑↓ scroll"], "  ", sheet.Width));
}
