using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Frame;

/// <summary>A message to the frame.</summary>
internal abstract record FrameMessage
{
    private FrameMessage()
    {
    }

    /// <summary>Opens the page of a digit.</summary>
    public sealed record GoTo(char Key) : FrameMessage;

    /// <summary>Opens the page before or after the open one.</summary>
    public sealed record ToNeighbour(int Direction) : FrameMessage;

    /// <summary>Moves the time cursor of all pages to a night.</summary>
    public sealed record ToNight(int Night) : FrameMessage;

    /// <summary>For what is open: an overlay, or the page.</summary>
    public sealed record ToPage(PageMessage Message) : FrameMessage;

    /// <summary>Opens a page and asks something of it. It was chosen from a list that says what it costs.</summary>
    public sealed record OnPage(char Key, PageMessage Message) : FrameMessage;

    /// <summary>Lists the keys of the place.</summary>
    public sealed record ListKeys : FrameMessage;

    /// <summary>Opens the palette.</summary>
    public sealed record Find : FrameMessage;

    /// <summary>Opens the help.</summary>
    public sealed record Help : FrameMessage;

    /// <summary>Opens the list of scenario files.</summary>
    public sealed record ListFiles : FrameMessage;

    /// <summary>Opens the form of a new scenario.</summary>
    public sealed record AskNew : FrameMessage;

    /// <summary>Opens a scenario file.</summary>
    public sealed record OpenFile(string Path) : FrameMessage;

    /// <summary>Reads the open scenario again.</summary>
    public sealed record Reload : FrameMessage;

    /// <summary>Gives the scenario's file to the person's editor.</summary>
    public sealed record Edit : FrameMessage;

    /// <summary>Puts the verdict's sentence on the clipboard.</summary>
    public sealed record Copy : FrameMessage;

    /// <summary>Writes the chosen night's curves and the report to files.</summary>
    public sealed record Export : FrameMessage;

    /// <summary>Starts work that brings another scenario or a sentence.</summary>
    public sealed record Start(PageJob Job) : FrameMessage;

    /// <summary>A file was changed by another program; null where all are as they were.</summary>
    public sealed record FileChanged(string? Path) : FrameMessage;

    /// <summary>Says something in the last row.</summary>
    public sealed record Say(string Text) : FrameMessage;

    /// <summary>Lets the mouse click, or leaves it to the terminal, where a drag selects text.</summary>
    public sealed record ToggleMouse : FrameMessage;

    /// <summary>Ends the program.</summary>
    public sealed record Quit : FrameMessage;

    /// <summary>The size of the screen.</summary>
    public sealed record Resized(int Width, int Height) : FrameMessage;

    /// <summary>How far a job is.</summary>
    public sealed record JobProgressed(PageJob Job, int Done, int Seconds) : FrameMessage;

    /// <summary>How a job ended.</summary>
    public sealed record JobEnded(PageJob Job, PageMessage Message) : FrameMessage;
}
