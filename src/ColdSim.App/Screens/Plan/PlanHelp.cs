namespace ColdSim.App.Screens.Plan;

/// <summary>How to read the page of the plan, and its keys.</summary>
internal static class PlanHelp
{
    /// <summary>The lines.</summary>
    public static IReadOnlyList<string> Lines { get; } =
    [
        "THE PLAN",
        "  The verdict over all nights, what it means inside, and",
        "  why. A row a night: the low outside, the lowest inside,",
        "  gas used, gas left at dawn, and how much colder all the",
        "  weather could be so that this night still holds.",
        "  Below, the chosen night from noon to noon; of a try, as it",
        "  is dotted and as tried without gaps.",
        "  t opens what can be turned: left and right turn it, a",
        "  number sets it, Enter finds the least that holds. Nothing",
        "  is written before S or w saves it.",
    ];
}
