using System.Text;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Frame;

/// <summary>What a page is told: what a person asks of it, and what the frame has for it.</summary>
internal abstract record PageMessage
{
    private PageMessage()
    {
    }

    /// <summary>Left or right on the time axis.</summary>
    public sealed record Step(int Minutes) : PageMessage;

    /// <summary>Up or down: an hour each on the curves, a row each on a page of text.</summary>
    public sealed record Rows(int Count) : PageMessage;

    /// <summary>A page of rows.</summary>
    public sealed record Pages(int Count) : PageMessage;

    public sealed record First : PageMessage;

    public sealed record Last : PageMessage;

    public sealed record NextEvent(int Direction) : PageMessage;

    public sealed record NextNight(int Direction) : PageMessage;

    public sealed record PointAt(int Minute) : PageMessage;

    public sealed record OtherUnits : PageMessage;

    public sealed record Turn(OpenPage Page) : PageMessage;

    /// <summary>Takes the chosen row of the event list.</summary>
    public sealed record Choose : PageMessage;

    /// <summary>Back to the curves.</summary>
    public sealed record Close : PageMessage;

    /// <summary>Asks how long is left if the furnace stopped where the cursor stands.</summary>
    public sealed record HeatStops : PageMessage;

    /// <summary>Marks the chosen row, or takes its mark away.</summary>
    public sealed record Mark : PageMessage;

    /// <summary>A character, to a page that takes text.</summary>
    public sealed record Typed(Rune Character) : PageMessage;

    /// <summary>Takes the last character back, on a page that takes text.</summary>
    public sealed record Erase : PageMessage;

    /// <summary>The page is turned to.</summary>
    /// <param name="At">Where the time cursor stands; null where no page has one.</param>
    public sealed record Opened(FrameCursor? At) : PageMessage;

    /// <summary>How much room the page has.</summary>
    public sealed record Sized(int Width, int Height) : PageMessage;

    /// <summary>The units of the whole frame.</summary>
    public sealed record UnitsAre(UnitStyle Units) : PageMessage;

    /// <summary>The figures that the page wanted.</summary>
    public sealed record Done(object Figures) : PageMessage;

    /// <summary>They could not be worked out.</summary>
    public sealed record Failed(string Why) : PageMessage;

    /// <summary>Somebody does not want to wait for them.</summary>
    public sealed record Stopped : PageMessage;
}
