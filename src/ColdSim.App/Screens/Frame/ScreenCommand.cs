using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;

namespace ColdSim.App.Screens.Frame;

/// <summary>Something that can be chosen from a list of commands.</summary>
/// <param name="Keys">Its key; empty where it has none.</param>
/// <param name="Words">What it does.</param>
/// <param name="Message">What is asked of the frame.</param>
/// <param name="Brief">Key and words for the last row; empty where that leaves it out.</param>
internal sealed record ScreenCommand(string Keys, string Words, FrameMessage Message, string Brief = "")
{
    /// <summary>The keys that work on every page.</summary>
    public static IReadOnlyList<ScreenCommand> Everywhere { get; } =
    [
        new("?", "list the keys of this place, and run one", new FrameMessage.ListKeys()),
        new(":", "find any command, night or setting; / does the same", new FrameMessage.Find(), ": find"),
        new("F1", "help: how to read this page", new FrameMessage.Help()),
        new("d", "why the furnace gives no heat: what is seen and heard", new FrameMessage.GoTo('d')),
        new("b", "which cylinders to buy", new FrameMessage.GoTo('b')),
        new("o", "open a scenario file", new FrameMessage.ListFiles()),
        new("N", "new scenario, by nine questions", new FrameMessage.AskNew()),
        new("R", "read the scenario's files again", new FrameMessage.Reload()),
        new("e", "edit the scenario's file (VISUAL, EDITOR)", new FrameMessage.Edit()),
        new("y", "copy the verdict's sentence", new FrameMessage.Copy()),
        new("E", "write the chosen night as CSV, and the report", new FrameMessage.Export()),
        new("u", "US or metric units", new FrameMessage.ToPage(new PageMessage.ToggleUnits()), "u units"),
        new("]", "next page", new FrameMessage.ToNeighbour(1)),
        new("[", "previous page", new FrameMessage.ToNeighbour(-1)),
        new("m", "mouse: click on the screen, or select text by dragging", new FrameMessage.ToggleMouse()),
        new("Esc", "back; on another page to the first; never quits", new FrameMessage.ToPage(new PageMessage.Close())),
        new("q", "quit; Ctrl-Q and Ctrl-C too", new FrameMessage.Quit()),
    ];

    /// <summary>The keys of the open page.</summary>
    public static IReadOnlyList<ScreenCommand> OfPage(FrameView view) => [.. view.Page.Keys.Select(k => OfKey(view.Page, k))];

    /// <summary>All that can be found: keys, pages, nights, and the places of all pages.</summary>
    public static IReadOnlyList<ScreenCommand> All(FrameView view) =>
    [
        .. OfPage(view),
        .. view.Pages.Where(p => p.IsInRow).Select(OfPage),
        .. OfNights(view),
        .. view.Pages.SelectMany(p => p.Places.Select(k => OfKey(p, k))),
        .. Everywhere,
    ];

    private static ScreenCommand OfKey(IPage page, KeyBinding key)
        => new(key.Keys, key.Cost.Length > 0 ? $"{key.Words}: {key.Cost}" : key.Words, new FrameMessage.OnPage(page.Key, key.Message));

    // What a page works out when it is opened is said beside its name.
    private static ScreenCommand OfPage(IPage page)
    {
        string cost = page.DueJob is { KeepsPageVisible: false } job ? $": {char.ToLowerInvariant(job.Description[0])}{job.Description[1..]}" : "";
        return new(page.Key.ToString(), $"page {page.Title}{cost}", new FrameMessage.GoTo(page.Key));
    }

    private static IEnumerable<ScreenCommand> OfNights(FrameView view) => view.Report is not { } report ? []
        : report.Nights.Select((n, i) => new ScreenCommand("", $"night {n.Number}, {ClockText.NightShort(n)}: {NightOutcome.Short(n)}", new FrameMessage.ToNight(i)));
}
