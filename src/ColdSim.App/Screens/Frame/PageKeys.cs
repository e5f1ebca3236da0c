using System.Text;
using ColdSim.App.Screens.Pages;
using Terminal.Gui.Input;

namespace ColdSim.App.Screens.Frame;

/// <summary>Which key asks for what. Alt is left out of account: Esc and a key soon after it arrive as one with Alt.</summary>
internal static class PageKeys
{
    private static readonly Key[] PageFunctions = [Key.F1, Key.F2, Key.F3, Key.F4, Key.F5, Key.F6, Key.F7, Key.F8, Key.F9];

    /// <param name="pressed">The key.</param>
    /// <param name="text">Whether the page takes text; then a bare q is a letter.</param>
    public static bool Quits(Key pressed, bool text = false)
    {
        Key key = pressed.NoAlt;
        return (key == Key.Q && !text) || key == Key.Q.WithCtrl || key == Key.C.WithCtrl;
    }

    /// <summary>The message to the frame: a digit or a function key turns to a page, all else is the page's; null where the key means nothing.</summary>
    /// <param name="pressed">The key.</param>
    /// <param name="text">Whether the page takes text; then what can be written is text, and only function keys turn to a page.</param>
    public static FrameMessage? Frame(Key pressed, bool text)
    {
        Key key = pressed.NoAlt;
        if (Array.IndexOf(PageFunctions, key) is >= 0 and int function)
            return new FrameMessage.GoTo((char)('1' + function));
        Rune rune = key.IsCtrl ? default : key.AsRune;
        if (text && rune.Value >= ' ' && rune.Value != 0x7f)
            return new FrameMessage.ToPage(new PageMessage.Typed(rune));
        if (rune.Value is >= '1' and <= '9')
            return new FrameMessage.GoTo((char)rune.Value);
        return Message(key) is { } message ? new FrameMessage.ToPage(message) : null;
    }

    /// <summary>The message of a key; null where the key means nothing.</summary>
    public static PageMessage? Message(Key pressed)
    {
        Key key = pressed.NoAlt;
        if (key == Key.Tab.WithShift)
            return new PageMessage.NextEvent(-1);
        bool fine = key.IsShift || key.IsCtrl;
        Key bare = key.NoShift.NoCtrl;
        return bare == Key.CursorLeft ? new PageMessage.Step(fine ? -1 : -10)
            : bare == Key.CursorRight ? new PageMessage.Step(fine ? 1 : 10)
            : key == Key.CursorUp ? new PageMessage.Rows(-1)
            : key == Key.CursorDown ? new PageMessage.Rows(1)
            : key == Key.PageUp ? new PageMessage.Pages(-1)
            : key == Key.PageDown ? new PageMessage.Pages(1)
            : key == Key.Home ? new PageMessage.First()
            : key == Key.End ? new PageMessage.Last()
            : key == Key.Tab ? new PageMessage.NextEvent(1)
            : key == Key.Enter ? new PageMessage.Choose()
            : key == Key.Esc ? new PageMessage.Close()
            : key == Key.Backspace ? new PageMessage.Backspace()
            : Letter(key.AsRune);
    }

    private static PageMessage? Letter(Rune rune) => rune.Value switch
    {
        'e' => new PageMessage.NextEvent(1),
        'E' => new PageMessage.NextEvent(-1),
        'n' => new PageMessage.NextNight(1),
        'p' => new PageMessage.NextNight(-1),
        'l' => new PageMessage.ToggleList(),
        'u' => new PageMessage.ToggleUnits(),
        'w' => new PageMessage.AskHeatStop(),
        ' ' => new PageMessage.ToggleMark(),
        '?' => new PageMessage.ToggleHelp(),
        _ => null,
    };
}
