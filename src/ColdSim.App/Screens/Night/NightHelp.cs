using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>The help of the nights: how to read the curves, event letters and cautions.</summary>
internal static class NightHelp
{
    private const int LineWidth = Sheet.MinWidth;

    private static readonly string[] Curves =
    [
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
        "",
        "LETTERS OF WATER, COLD AND THE 12 V SIDE",
        "  w I m  water begins to freeze, is all ice, has thawed",
        "  d k    damp settles on a cold surface, 50 °F inside",
        "  B b z  battery flat, voltage back, so no gas is asked for",
        "  E e X  generator starts, stops, has no gas",
        "  N n K  battery freezes, has thawed, too cold to give",
        "  A U    the cold wakes somebody, resets given up",
        "",
    ];

    // They share a line above.
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
    public static IReadOnlyList<string> Lines(UnitStyle units) => [.. units.InOwn(Curves), .. LettersIn(units)];
}
