using System.Text;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Pages;

/// <summary>A message to a page: what a person asks of it, or what the frame has for it.</summary>
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

    public sealed record ToggleUnits : PageMessage;

    /// <summary>Opens the list of events, or everything as text, and closes it again.</summary>
    public sealed record ToggleList : PageMessage;

    /// <summary>Open or close what the gauges should show at the time cursor.</summary>
    public sealed record ToggleGauges : PageMessage;

    /// <summary>Enter: takes the chosen row, or starts what the page offers.</summary>
    public sealed record Choose : PageMessage;

    /// <summary>Esc: back to where the page begins.</summary>
    public sealed record Close : PageMessage;

    /// <summary>Asks how long is left if the furnace stopped at the cursor.</summary>
    public sealed record AskHeatStop : PageMessage;

    /// <summary>Asks what would make all nights hold.</summary>
    public sealed record AskRemedies : PageMessage;

    /// <summary>Opens the list of what can be tried, and closes it again.</summary>
    public sealed record ToggleTry : PageMessage;

    /// <summary>Takes back what was tried last.</summary>
    public sealed record UndoTry : PageMessage;

    /// <summary>Takes back all that is tried.</summary>
    public sealed record ResetTry : PageMessage;

    /// <summary>Asks as what a try is saved.</summary>
    public sealed record SaveTry : PageMessage;

    /// <summary>Asks for the name of a new scenario with what is tried.</summary>
    public sealed record WriteTry : PageMessage;

    /// <summary>Marks the chosen row, or takes its mark away.</summary>
    public sealed record ToggleMark : PageMessage;

    /// <summary>Takes over what the page has found.</summary>
    public sealed record TakeOver : PageMessage;

    /// <summary>A character, to a page that takes text.</summary>
    public sealed record Typed(Rune Character) : PageMessage;

    /// <summary>Removes the last character, on a page that takes text.</summary>
    public sealed record Backspace : PageMessage;

    /// <summary>The page has been opened.</summary>
    /// <param name="At">The time cursor of the pages; null where no page has one.</param>
    public sealed record Opened(TimeCursor? At) : PageMessage;

    /// <summary>How much room the page has.</summary>
    public sealed record Resized(int Width, int Height) : PageMessage;

    /// <summary>The units of the whole frame.</summary>
    public sealed record UnitsChanged(UnitStyle Units) : PageMessage;

    /// <summary>The result of the page's job.</summary>
    public sealed record Completed(object Result) : PageMessage;

    /// <summary>The job failed.</summary>
    public sealed record Failed(string Reason) : PageMessage;

    /// <summary>The job was cancelled.</summary>
    public sealed record Cancelled : PageMessage;
}
