using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ColdSim.App.Screens;

/// <summary>How each ink looks: two of the sixteen colours on the terminal's own ground, or none at all.</summary>
internal sealed class InkColors(bool color)
{
    private readonly Attribute _plain = new(Color.None, Color.None);
    private readonly Attribute _strong = new(Color.None, Color.None, TextStyle.Bold);
    private readonly Attribute _pointer = new(Color.None, Color.None, TextStyle.Reverse);
    private readonly Attribute _first = new(color ? new Color(StandardColor.Cyan) : Color.None, Color.None);
    private readonly Attribute _second = new(color ? new Color(StandardColor.Magenta) : Color.None, Color.None);

    public Scheme Scheme => new(_plain);

    public Attribute Of(Ink ink) => ink switch
    {
        Ink.Strong => _strong,
        Ink.First => _first,
        Ink.Second => _second,
        Ink.Pointer => _pointer,
        _ => _plain,
    };
}
