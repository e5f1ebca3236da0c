namespace ColdSim.App.Screens.Drawing;

/// <summary>The colours that every terminal has, on its own ground; black and the two that a ground may have are left out.</summary>
internal enum AnsiColor
{
    Red,
    Green,
    Yellow,
    Blue,
    Magenta,
    Cyan,
    DarkGray,
    BrightRed,
    BrightGreen,
    BrightYellow,
    BrightBlue,
    BrightMagenta,
    BrightCyan,
}

/// <summary>A quantity and its colour.</summary>
/// <param name="Style">The quantity.</param>
/// <param name="Meaning">What it is, in words.</param>
/// <param name="Color">Its colour on every page.</param>
internal sealed record QuantityColor(CellStyle Style, string Meaning, AnsiColor Color);

/// <summary>One colour for each quantity, the same on every page. A stroke and a name tell the curves of a strip apart without them.</summary>
internal static class QuantityColors
{
    public static IReadOnlyList<QuantityColor> All { get; } =
    [
        new(CellStyle.Inside, "air inside", AnsiColor.Red),
        new(CellStyle.Outside, "air outside", AnsiColor.Blue),
        new(CellStyle.SetPoint, "set point", AnsiColor.DarkGray),
        new(CellStyle.Freezing, "freezing", AnsiColor.Cyan),
        new(CellStyle.Demand, "gas asked for", AnsiColor.Magenta),
        new(CellStyle.Supply, "gas that can be kept up", AnsiColor.Green),
        new(CellStyle.Shortage, "gas that is missing", AnsiColor.BrightRed),
        new(CellStyle.Liquid, "liquid in the cylinder", AnsiColor.BrightBlue),
        new(CellStyle.GasLeft, "gas left", AnsiColor.BrightGreen),
        new(CellStyle.Charge, "charge of the battery", AnsiColor.Yellow),
        new(CellStyle.PowerDrawn, "power drawn", AnsiColor.BrightMagenta),
        new(CellStyle.PowerGiven, "power that comes in", AnsiColor.BrightYellow),
    ];

    private static readonly AnsiColor?[] ByStyle = Colors();

    /// <summary>The colour of a style; null where it has none.</summary>
    public static AnsiColor? Of(CellStyle style) => ByStyle[(int)style];

    private static AnsiColor?[] Colors()
    {
        AnsiColor?[] colors = new AnsiColor?[Enum.GetValues<CellStyle>().Length];
        foreach (QuantityColor quantity in All)
            colors[(int)quantity.Style] = quantity.Color;
        return colors;
    }
}
