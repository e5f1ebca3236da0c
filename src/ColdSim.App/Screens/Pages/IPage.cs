using ColdSim.App.Screens.Drawing;

namespace ColdSim.App.Screens.Pages;

/// <summary>One page of the screen: everything it shows is a function of what it holds.</summary>
/// <remarks>
/// A page never waits. It names a job whose result it needs with <see cref="DueJob"/>, and the result arrives in a message. A page keeps
/// its state while another page is open.
/// </remarks>
internal interface IPage
{
    /// <summary>The digit that opens it; the function key of the same number does too.</summary>
    char Key { get; }

    /// <summary>A word or two for the row of pages.</summary>
    string Title { get; }

    /// <summary>Its keys and how to read it; null where the page draws its own help.</summary>
    IReadOnlyList<string>? Help { get; }

    /// <summary>The job whose result the page needs: the same object until the result is there; null while it needs none.</summary>
    PageJob? DueJob => null;

    /// <summary>Whether typed characters go to the page and not to the frame.</summary>
    bool TakesText => false;

    /// <summary>Its time cursor; null for a page without one.</summary>
    TimeCursor? Cursor => null;

    /// <summary>The page as a sheet of exactly this size.</summary>
    Sheet Draw(int width, int height);

    /// <summary>The page after a message.</summary>
    IPage Update(PageMessage message);

    /// <summary>The message that a click means; null for none.</summary>
    PageMessage? Click(int x, int y, int width, int height) => null;
}

/// <summary>The position of a time cursor.</summary>
/// <param name="Night">Index of the night.</param>
/// <param name="Minute">Sample of the run.</param>
/// <param name="Time">The instant.</param>
internal sealed record TimeCursor(int Night, int Minute, DateTimeOffset Time);
