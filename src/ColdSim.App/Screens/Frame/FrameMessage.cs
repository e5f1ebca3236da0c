namespace ColdSim.App.Screens.Frame;

/// <summary>What the frame is told.</summary>
internal abstract record FrameMessage
{
    private FrameMessage()
    {
    }

    /// <summary>Turns to the page of a digit.</summary>
    public sealed record GoTo(char Key) : FrameMessage;

    /// <summary>For the open page, or for the frame itself.</summary>
    public sealed record Ask(PageMessage Message) : FrameMessage;

    /// <summary>The screen has this size now.</summary>
    public sealed record Resized(int Width, int Height) : FrameMessage;

    /// <summary>How far some work is.</summary>
    public sealed record Counted(PageWork Work, int Done, int Seconds) : FrameMessage;

    /// <summary>How some work ended.</summary>
    public sealed record Ended(PageWork Work, PageMessage Message) : FrameMessage;
}
