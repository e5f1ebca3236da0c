namespace ColdSim.App.Screens.Frame;

/// <summary>What the frame asks of the terminal; done once and then forgotten.</summary>
internal abstract record TerminalEffect
{
    private TerminalEffect()
    {
    }

    /// <summary>Gives the terminal back and ends.</summary>
    public sealed record Quit : TerminalEffect;

    /// <summary>Gives the terminal to an editor with a file, and takes it back.</summary>
    public sealed record Edit(string Path) : TerminalEffect;

    /// <summary>Puts text on the terminal's clipboard.</summary>
    public sealed record Copy(string Text) : TerminalEffect;

    /// <summary>Switches the reports of mouse buttons on or off.</summary>
    public sealed record ReportMouse(bool On) : TerminalEffect;
}
