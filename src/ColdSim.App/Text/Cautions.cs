namespace ColdSim.App.Text;

/// <summary>What every reader of an estimate has to hear, in one wording for the command line and the screen.</summary>
internal static class Cautions
{
    /// <summary>All of them, one sentence or two a line.</summary>
    public static IReadOnlyList<string> Lines { get; } =
    [
        "These are estimates from a model, not measurements. Keep a reserve and a way to leave.",
        "Never heat a cylinder with a flame, a torch, or any heater not listed for that cylinder.",
        "Cylinders stay outside and upright; never bring one into the coach.",
        "A cylinder must never get hotter than 125 °F (52 °C), and never be filled past its legal fill.",
        "Have working carbon monoxide and propane alarms. If one sounds: everybody out, gas off from outside.",
        "Ventless heaters, stoves and ovens take oxygen and make carbon monoxide and moisture: never sleep with one lit.",
        "The code in force, the makers' plates and manuals, and a licensed technician decide; this program does not.",
    ];

    /// <summary>The least to print where room is short.</summary>
    public static IReadOnlyList<string> Short { get; } =
    [
        "Estimates only: the code in force, the makers' plates and a licensed technician decide.",
        "Never heat a cylinder with a flame or an unlisted heater; keep it outside, upright, below 125 °F (52 °C).",
        "Working CO and propane alarms; never sleep with a ventless heater, stove or oven lit.",
    ];
}
