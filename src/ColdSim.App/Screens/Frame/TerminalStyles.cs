using ColdSim.App.Screens.Drawing;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ColdSim.App.Screens.Frame;

/// <summary>How each style looks: bold, reverse, or one of the sixteen colours on the terminal's own ground; without colour, bold and reverse alone.</summary>
internal sealed class TerminalStyles
{
    private readonly Attribute[] _attributes;

    public TerminalStyles(bool color)
    {
        CellStyle[] styles = Enum.GetValues<CellStyle>();
        _attributes = new Attribute[styles.Length];
        foreach (CellStyle style in styles)
            _attributes[(int)style] = Made(style, color);
        Scheme = new(_attributes[(int)CellStyle.Plain]);
    }

    public Scheme Scheme { get; }

    public Attribute Of(CellStyle style) => _attributes[(int)style];

    private static Attribute Made(CellStyle style, bool color) => style switch
    {
        CellStyle.Strong => new(Color.None, Color.None, TextStyle.Bold),
        CellStyle.Pointer => new(Color.None, Color.None, TextStyle.Reverse),
        CellStyle.StrongPointer => new(Color.None, Color.None, TextStyle.Bold | TextStyle.Reverse),
        _ => color && QuantityColors.Of(style) is { } of ? new(new Color(Name(of)), Color.None) : new(Color.None, Color.None),
    };

    private static ColorName16 Name(AnsiColor color) => color switch
    {
        AnsiColor.Red => ColorName16.Red,
        AnsiColor.Green => ColorName16.Green,
        AnsiColor.Yellow => ColorName16.Yellow,
        AnsiColor.Blue => ColorName16.Blue,
        AnsiColor.Magenta => ColorName16.Magenta,
        AnsiColor.Cyan => ColorName16.Cyan,
        AnsiColor.DarkGray => ColorName16.DarkGray,
        AnsiColor.BrightRed => ColorName16.BrightRed,
        AnsiColor.BrightGreen => ColorName16.BrightGreen,
        AnsiColor.BrightYellow => ColorName16.BrightYellow,
        AnsiColor.BrightBlue => ColorName16.BrightBlue,
        AnsiColor.BrightMagenta => ColorName16.BrightMagenta,
        _ => ColorName16.BrightCyan,
    };
}
