using ColdSim.App.Screens.Pages;
using ColdSim.App.Screens.Tries;

namespace ColdSim.App.Screens.Plan;

/// <summary>What the keys of the page of the plan do, the most important first.</summary>
internal static class PlanKeys
{
    /// <summary>As the page is now.</summary>
    public static IReadOnlyList<KeyBinding> Of(PlanPage page) => page.Saving is { } saving ? OfSaving(saving)
        : page.Help is { } help ? OfRemedies(help)
        : page.Try is not { } tried ? OfNights
        : [.. tried.IsOpen ? OfTries : [.. OfNights.Take(3), Open, .. OfNights.Skip(3)], .. tried.Now.IsNone ? [] : OfATry];

    private static KeyBinding Open { get; } = new("t", "try it: turn a thing and see the nights change", new PageMessage.ToggleTry(), "t try it");

    private static IReadOnlyList<KeyBinding> OfTries { get; } =
    [
        new("↑↓", "another thing", new PageMessage.Rows(1), "↑↓ choose"),
        new("←→", "less, more; with Shift or Ctrl ten steps; a number sets it", new PageMessage.Step(10), "←→ turn"),
        new("Enter", "the least with which all nights hold; runs the plan some ten times", new PageMessage.Choose(), "Enter least that holds"),
        new("t", "back to the nights", new PageMessage.ToggleTry(), "Esc nights"),
        new("h", "what would make all nights hold; runs the plan some hundred times", new PageMessage.AskRemedies(), "h what would hold"),
        .. KeyBindings.OfNights.Select(b => b with { Brief = "" }),
    ];

    private static IReadOnlyList<KeyBinding> OfATry { get; } =
    [
        new("z", "undo", new PageMessage.UndoTry(), "z undo"),
        new("0", "as it is: takes back all that is tried", new PageMessage.ResetTry(), "0 reset"),
        new("S", "save the try as an option or into the scenario", new PageMessage.SaveTry(), "S save"),
        new("w", "write the try as a new scenario", new PageMessage.WriteTry(), "w write"),
    ];

    private static IReadOnlyList<KeyBinding> OfSaving(SavePrompt saving) =>
    [
        new("Enter", "save", new PageMessage.Choose(), "Enter save"),
        .. saving.As == SaveAs.NewFile ? Array.Empty<KeyBinding>() : [new KeyBinding("Tab", "as an option, or into the scenario itself", new PageMessage.NextEvent(1), "Tab option or scenario")],
        new("Esc", "do not save", new PageMessage.Close(), "Esc no"),
    ];

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
        .. help.Chosen is null ? Array.Empty<KeyBinding>() : [new KeyBinding("Enter", "try it", new PageMessage.Choose(), "Enter try it")],
        new("h", "close", new PageMessage.AskRemedies(), "Esc close"),
    ];
}
