namespace ColdSim.App.Screens.Pages;

/// <summary>What a key does at a place. The list of keys, the help, the palette and the last row are all made from these declarations.</summary>
/// <param name="Keys">The key as it is shown: one character is itself read as the key; <c>↑↓</c>, <c>Enter</c> or <c>Tab</c> are names.</param>
/// <param name="Words">What it does, in words.</param>
/// <param name="Message">What it asks of the page; for a pair such as <c>←→</c> what the second does.</param>
/// <param name="Brief">Key and words for the last row, such as <c>n/p night</c>; empty where the last row leaves it out.</param>
internal sealed record KeyBinding(string Keys, string Words, PageMessage Message, string Brief = "")
{
    /// <summary>What it costs to run, such as "runs it 400 times"; empty where the answer is there at once. Enter then asks before it runs.</summary>
    public string Cost { get; init; } = "";
}

/// <summary>Declarations that several pages share.</summary>
internal static class KeyBindings
{
    /// <summary>Up and down in a text.</summary>
    public static IReadOnlyList<KeyBinding> Scrolling { get; } =
    [
        new("↑↓", "scroll", new PageMessage.Rows(1), "↑↓ scroll"),
        new("PgUp PgDn", "scroll by a screen", new PageMessage.Pages(1)),
        new("Tab", "next part; Shift-Tab the one before", new PageMessage.NextEvent(1), "Tab next part"),
        new("←→", "sideways, where the screen is narrow", new PageMessage.Step(10)),
        new("Home End", "beginning, end", new PageMessage.Last()),
    ];

    /// <summary>Enter where the page has nothing yet.</summary>
    public static IReadOnlyList<KeyBinding> Start { get; } = [new("Enter", "start again", new PageMessage.Choose(), "Enter start")];

    /// <summary>From night to night.</summary>
    public static IReadOnlyList<KeyBinding> OfNights { get; } =
    [
        new("n", "next night", new PageMessage.NextNight(1), "n/p night"),
        new("p", "previous night", new PageMessage.NextNight(-1)),
    ];

    /// <summary>The same, where up and down do it too.</summary>
    public static IReadOnlyList<KeyBinding> ChoosingNights { get; } =
    [
        new("↑↓", "another night", new PageMessage.Rows(1), "↑↓ night"),
        .. OfNights.Select(b => b with { Brief = "" }),
        new("Home End", "first, last night", new PageMessage.Last()),
    ];

    /// <summary>Opens everything as text, or closes it.</summary>
    public static KeyBinding AsText(bool isOpen, string what) => isOpen
        ? new("l", $"back to the {what}", new PageMessage.ToggleList(), $"l {what}")
        : new("l", "everything as text", new PageMessage.ToggleList(), "l all as text");
}
