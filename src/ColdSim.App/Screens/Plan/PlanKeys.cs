using ColdSim.App.Screens.Pages;

namespace ColdSim.App.Screens.Plan;

/// <summary>What the keys of the page of the plan do, the most important first.</summary>
internal static class PlanKeys
{
    /// <summary>As the page is now.</summary>
    public static IReadOnlyList<KeyBinding> Of(PlanPage page) => page.Help is { } help ? OfRemedies(help) : OfNights;

    private static IReadOnlyList<KeyBinding> OfNights { get; } =
    [
        new("↑↓", "another night", new PageMessage.Rows(1), "↑↓ night"),
        new("Enter", "opens the night, with every value", new PageMessage.Choose(), "Enter open it"),
        new("h", "what would make all nights hold; runs the plan some hundred times", new PageMessage.AskRemedies(), "h what would hold"),
        new("←→", "10 minutes; with Shift or Ctrl 1", new PageMessage.Step(10), "←→ 10 min"),
        new("Tab", "next event of the run; Shift-Tab the one before", new PageMessage.NextEvent(1), "Tab event"),
        .. KeyBindings.OfNights.Select(b => b with { Brief = "" }),
        new("Home End", "first, last night", new PageMessage.Last()),
    ];

    private static IReadOnlyList<KeyBinding> OfRemedies(RemedyList help) =>
    [
        .. help.Actions.Count > 1 ? [new KeyBinding("↑↓", "another one", new PageMessage.Rows(1), "↑↓ choose")] : Array.Empty<KeyBinding>(),
        new("h", "close", new PageMessage.AskRemedies(), "Esc close"),
    ];
}
