using System.Text;
using Terminal.Gui.Input;

namespace ColdSim.App.Screens;

/// <summary>Which key asks for what. Alt is left out of account: Esc and a key soon after it arrive as one with Alt.</summary>
internal static class NightKeys
{
    public static bool Quits(Key pressed)
    {
        Key key = pressed.NoAlt;
        return key == Key.Q || key == Key.Q.WithCtrl || key == Key.C.WithCtrl;
    }

    /// <summary>The message of a key; null where the key means nothing.</summary>
    public static NightMessage? Message(Key pressed)
    {
        Key key = pressed.NoAlt;
        if (key == Key.Tab.WithShift)
            return new NightMessage.NextEvent(-1);
        bool fine = key.IsShift || key.IsCtrl;
        Key bare = key.NoShift.NoCtrl;
        return bare == Key.CursorLeft ? new NightMessage.Step(fine ? -1 : -10)
            : bare == Key.CursorRight ? new NightMessage.Step(fine ? 1 : 10)
            : key == Key.CursorUp ? new NightMessage.Rows(-1)
            : key == Key.CursorDown ? new NightMessage.Rows(1)
            : key == Key.PageUp ? new NightMessage.Pages(-1)
            : key == Key.PageDown ? new NightMessage.Pages(1)
            : key == Key.Home ? new NightMessage.First()
            : key == Key.End ? new NightMessage.Last()
            : key == Key.Tab ? new NightMessage.NextEvent(1)
            : key == Key.Enter ? new NightMessage.Choose()
            : key == Key.Esc ? new NightMessage.Close()
            : Letter(key.AsRune);
    }

    private static NightMessage? Letter(Rune rune) => rune.Value switch
    {
        'e' => new NightMessage.NextEvent(1),
        'E' => new NightMessage.NextEvent(-1),
        'n' => new NightMessage.NextNight(1),
        'p' => new NightMessage.NextNight(-1),
        'l' => new NightMessage.Turn(OpenPage.Events),
        'u' => new NightMessage.OtherUnits(),
        '?' => new NightMessage.Turn(OpenPage.Help),
        _ => null,
    };
}
