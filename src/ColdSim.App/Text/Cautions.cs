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

    /// <summary>What goes with every refill.</summary>
    public const string Filling =
        "Only a trained filler fills a cylinder, by weight or with the gauge open, at most to its legal filling; it rides outside or upright in the "
        + "open, its valve shut and plugged.";

    /// <summary>What goes with a day until which a refill can wait.</summary>
    public const string Waiting =
        "A refill that can wait can wait only in this weather: colder nights, a closed road or a closed station leave nothing. Keep a reserve.";

    /// <summary>The least to print where room is short.</summary>
    public static IReadOnlyList<string> Short { get; } =
    [
        "Estimates only: the code in force, the makers' plates and a licensed technician decide.",
        "Never heat a cylinder with a flame or an unlisted heater; keep it outside, upright, below 125 °F (52 °C).",
        "Working CO and propane alarms; never sleep with a ventless heater, stove or oven lit.",
    ];
}
