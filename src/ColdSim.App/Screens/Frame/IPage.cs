namespace ColdSim.App.Screens.Frame;

/// <summary>One page of the screen: everything it shows is a function of what it holds.</summary>
/// <remarks>
/// A page never waits: what takes long it asks for with <see cref="Wanted"/>, and is told when it is there. It keeps its state while
/// another page is open.
/// </remarks>
internal interface IPage
{
    /// <summary>The digit that opens it; the function key of the same number does too.</summary>
    char Key { get; }

    /// <summary>A word or two for the row of pages.</summary>
    string Title { get; }

    /// <summary>Its keys and how to read it, for the help; null where the page has a help of its own.</summary>
    IReadOnlyList<string>? Help { get; }

    /// <summary>What it wants worked out, the same object until it is there; null while it wants nothing.</summary>
    PageWork? Wanted => null;

    /// <summary>Whether what can be written goes to the page, and not to the frame.</summary>
    bool TakesText => false;

    /// <summary>Where its time cursor stands; null for a page without one.</summary>
    FrameCursor? Cursor => null;

    /// <summary>The page as a sheet of exactly this size.</summary>
    Sheet Draw(int width, int height);

    /// <summary>What a message makes of it.</summary>
    IPage After(PageMessage message);

    /// <summary>What a click asks for; null for nothing.</summary>
    PageMessage? Click(int x, int y, int width, int height) => null;
}

/// <summary>Where a time cursor stands.</summary>
/// <param name="Night">Index of the night.</param>
/// <param name="Minute">Sample of the run.</param>
/// <param name="Time">The instant.</param>
internal sealed record FrameCursor(int Night, int Minute, DateTimeOffset Time);
