using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Night;

/// <summary>The help of the nights: how to read the picture, words of events and cautions.</summary>
internal static class NightHelp
{
    private const int LineWidth = Sheet.MinWidth;

    private static readonly string[] Picture =
    [
        "READING THE PICTURE",
        "  Each name is where its curve ends, with its stroke:",
        "  ⠒⠒⠒ no gaps, ⠒ ⠒ dashed, ⠂⠂⠂ dotted: as it is.",
        "  demand      gas asked for, as gross heat, mean of the",
        "              hour around",
        "  kept up     what the cylinder could give without end in",
        "              this weather at this fill",
        "  ⠡⠡⠡         more is asked than can be kept up: the rest",
        "              comes from the warmth of the liquid",
        "  ⣿⣿⣿ SHORT   a burner gets less gas than it needs",
        "  set point, freezing   ruled across inside",
        "  liquid      in the cylinder in use; the air outside",
        "              warms it",
        "  ×           measured, from the log: inside, and the liquid",
        "              or wall of the cylinder in use",
        "  ↑           the curve runs above the strip",
        "  ╵           an event; its word is beside it, and what",
        "              repeats has the mark alone",
        "  burner      part of the time: blank never, . little,",
        "              - half, + most, # always; then its hours",
        "  can give now  what cylinder and regulator can give at",
        "              full delivery pressure",
        "  Pressures are gauge. Axes are one for all nights.",
        "",
    ];

    private static string[] WordsIn(UnitStyle units) =>
    [
        "WORDS OF EVENTS",
        .. EventKinds.Listed.OrderByDescending(w => w.Rank).Select(w => $"  {w.Legend,-14}{units.InOwn(w.Sentence)}"),
        "",
        "CAUTIONS",
        .. units.InOwn(Cautions.Lines).SelectMany(c => CellText.Wrap(c, LineWidth - 4).Select((line, i) => (i == 0 ? "  - " : "    ") + line)),
    ];

    /// <summary>All of it.</summary>
    public static IReadOnlyList<string> Lines(UnitStyle units) => [.. units.InOwn(Picture), .. WordsIn(units)];
}
