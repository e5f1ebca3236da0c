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

    /// <summary>For the open page, or for the frame itself.</summary>
    public sealed record ToPage(PageMessage Message) : FrameMessage;

    /// <summary>The size of the screen.</summary>
    public sealed record Resized(int Width, int Height) : FrameMessage;

    /// <summary>How far a job is.</summary>
    public sealed record JobProgressed(PageJob Job, int Done, int Seconds) : FrameMessage;

    /// <summary>How a job ended.</summary>
    public sealed record JobEnded(PageJob Job, PageMessage Message) : FrameMessage;
}
