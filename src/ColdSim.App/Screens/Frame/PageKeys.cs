using System.Text;
using ColdSim.App.Screens.Pages;
using Terminal.Gui.Input;

namespace ColdSim.App.Screens.Frame;

/// <summary>Which key asks for what. Alt is left out of account: Esc and a key soon after it arrive as one with Alt.</summary>
internal static class PageKeys
{
    private static readonly Key[] PageFunctions = [Key.F2, Key.F3, Key.F4, Key.F5, Key.F6, Key.F7, Key.F8, Key.F9];

    /// <summary>The message to the frame; null where the key means nothing.</summary>
    /// <param name="pressed">The key.</param>
    /// <param name="view">What is open: a letter or digit that the page declares is its own, then those of every page count, then the digits of the pages.</param>
    public static FrameMessage? Frame(Key pressed, FrameView view)
    {
        Key key = pressed.NoAlt;
        if (key == Key.Q.WithCtrl || key == Key.C.WithCtrl)
            return new FrameMessage.Quit();
        if (key == Key.F1)
            return new FrameMessage.Help();
        if (Array.IndexOf(PageFunctions, key) is >= 0 and int function)
            return new FrameMessage.GoTo((char)('2' + function));
        if (key == Key.PageDown.WithCtrl || key == Key.PageUp.WithCtrl)
            return new FrameMessage.ToNeighbour(key == Key.PageDown.WithCtrl ? 1 : -1);
        Rune rune = key.IsCtrl ? default : key.AsRune;
        bool isCharacter = rune.Value >= ' ' && rune.Value != 0x7f;
        if (!isCharacter)
            return Message(key) is { } message ? new FrameMessage.ToPage(message) : null;
        if (view.TakesText || (view is { Over: null, Page.TakesNumbers: true } && rune.Value is (>= '1' and <= '9') or '-' or '+' or '.'))
            return new FrameMessage.ToPage(new PageMessage.Typed(rune));
        return Character(rune.Value == ' ' ? "Space" : rune.ToString(), view);
    }

    private static FrameMessage? Character(string key, FrameView view)
    {
        if (view.Page.Keys.FirstOrDefault(k => k.Keys == key) is { } own)
            return new FrameMessage.ToPage(own.Message);
        if (ScreenCommand.Everywhere.FirstOrDefault(c => c.Keys == (key == "/" ? ":" : key)) is { } common)
            return common.Message;
        return key is [>= '1' and <= '9'] ? new FrameMessage.GoTo(key[0]) : null;
    }

    /// <summary>The message of a key that is no character; null where the key means nothing.</summary>
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
            : null;
    }
}
