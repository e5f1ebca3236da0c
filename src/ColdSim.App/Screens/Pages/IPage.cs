using ColdSim.App.Screens.Drawing;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>One page of the screen: everything it shows is a function of what it holds.</summary>
/// <remarks>
/// A page never waits. It names a job whose result it needs with <see cref="DueJob"/>, and the result arrives in a message. A page keeps
/// its state while another page is open.
/// </remarks>
internal interface IPage
{
    /// <summary>The digit that opens it, and the function key of the same number does too; or a letter.</summary>
    char Key { get; }

    /// <summary>Whether the row of pages names it while another page is open. One that it does not name is a command of every page.</summary>
    bool IsInRow => true;

    /// <summary>A word or two for the row of pages.</summary>
    string Title { get; }

    /// <summary>How to read it, under a heading; its keys are not repeated here.</summary>
    IReadOnlyList<string> Help { get; }

    /// <summary>What its keys do as it is now, the most important first.</summary>
    IReadOnlyList<KeyBinding> Keys { get; }

    /// <summary>What can be found and gone to on the page by name, such as a setting; the key is left empty.</summary>
    IReadOnlyList<KeyBinding> Places => [];

    /// <summary>The job whose result the page needs: the same object until the result is there; null while it needs none.</summary>
    PageJob? DueJob => null;

    /// <summary>Whether typed characters go to the page and not to the frame.</summary>
    bool TakesText => false;

    /// <summary>Whether digits and signs go to the page and not to the frame.</summary>
    bool TakesNumbers => false;

    /// <summary>Its time cursor; null for a page without one.</summary>
    TimeCursor? Cursor => null;

    /// <summary>The fewest columns and rows that it is drawn for.</summary>
    (int Width, int Height) Least => (Sheet.MinWidth, Sheet.MinHeight);

    /// <summary>The page as a sheet of exactly this size.</summary>
    Sheet Draw(int width, int height);

    /// <summary>The page after a message.</summary>
    IPage Update(PageMessage message);

    /// <summary>The page after its scenario was read again, with what it keeps of what it was before.</summary>
    IPage After(IPage before) => this;

    /// <summary>The message that a click means; null for none.</summary>
    PageMessage? Click(int x, int y, int width, int height) => null;
}

/// <summary>The position of a time cursor.</summary>
/// <param name="Night">Index of the night.</param>
/// <param name="Minute">Sample of the run.</param>
/// <param name="Time">The instant.</param>
internal sealed record TimeCursor(int Night, int Minute, DateTimeOffset Time)
{
    /// <summary>The cursor at a sample of a run.</summary>
    public static TimeCursor At(RunReport report, int night, int minute) => new(night, minute, report.Scenario.Start.AddMinutes(minute));

    /// <summary>The cursor in a night: where it was, at the same time of day if it was in another night, in the middle where it was nowhere.</summary>
    public static TimeCursor InNight(RunReport report, int night, TimeCursor? before)
    {
        if (before?.Night == night)
            return before;
        MinuteRange span = MinuteRange.Of(report, night);
        int minute = before is null ? span.From + span.Length / 2 : before.Minute + (night - before.Night) * 24 * 60;
        return At(report, night, span.Clamp(minute));
    }
}
