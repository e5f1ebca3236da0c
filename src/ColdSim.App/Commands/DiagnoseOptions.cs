using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary>The options of <c>diagnose</c>. Each is text by its name, because a person at a terminal answers the same questions.</summary>
internal sealed class DiagnoseOptions
{
    public Argument<string?> File { get; } = new("FILE")
    {
        Description = "Scenario file of your rig: its cylinder, furnace, regulator, gas and elevation. [the rig kept by 'coldsim new "
            + "--mine', unless --cylinder is given]",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public Option<bool> Smell { get; } = new("--smell") { Description = "There is a smell of gas." };

    public Option<bool> CarbonMonoxide { get; } = new("--co")
    {
        Description = "A CO alarm sounds, or somebody has a headache, is dizzy or sick.",
    };

    /// <summary>What is seen, heard, read and remembered, by the options' names.</summary>
    public IReadOnlyList<Option<string?>> Signs { get; } =
    [
        Text("--stove", "normal|weak|fades|none|flares", "How the stove burns; flares: high, jumping flames."),
        Text("--furnace", "silent|fan-only|clicks|seconds|minutes|burns",
            "How far the furnace gets: nothing; fan alone; clicks without a flame; burns for seconds, for minutes; burns on with too "
            + "little heat."),
        Text("--fan", "full|slow|none", "How its fan runs."),
        Text("--volts", "V", "Voltage at the furnace's board while the fan runs, such as \"11.2 V\"."),
        Text("--air", "T", "Outside air now, such as \"-8 °F\"."),
        Text("--left", "PART", "What is left, weighed or by a gauge: a part of a full one or a mass; may be more than full."),
        Text("--scale", "M", "Or what the scale shows with the cylinder on it."),
        Text("--tare", "M", "With --scale: empty mass as stamped. [usual for the size]"),
        Text("--pressure", "P", "Gauge pressure at the cylinder, where there is a gauge."),
        Text("--wall", "same|colder|much-colder|T",
            "The cylinder's wall low down, against something as cold as the air; or its temperature."),
        Text("--frost-line", "none|H", "Height of the frost's edge above the body's lowest point; none: no frost."),
        Text("--regulator", "dry|iced", "Whether there is ice on the regulator."),
        Text("--did", "opened-fast,swapped,filled,nothing",
            "What was just done: the valve opened fast, the cylinder swapped, filled within two days."),
        Text("--vents", "clear|snow", "The furnace's intake and vent outside."),
        Text("--return", "clear|blocked", "Its return grille and ducts inside."),
        Text("--load", "alone|together", "Whether it fails by itself, or only beside other burners."),
        Text("--by-day", "same|better", "Whether it goes better in the warmth of the day."),
        Text("--reopened", "helped|no", "Whether it helped to shut every burner and the valve, wait five minutes and open slowly."),
        Text("--reset", "helped|no", "Whether it helped to switch the furnace off at the thermostat or the board for a minute, and on."),
        Text("--gas", "propane|mixed|butane", "What was bought. [the file's]"),
        Text("--elevation", "H", "Above sea level. [the file's, or 0]"),
        Text("--use", "light|usual|hard",
            "How much the furnace burned in the last eight hours: a fifth, half, nearly all of the time. [usual]"),
        Text("--cylinder", "SIZE", "Without a file: such as \"20 lb\". [20 lb]"),
        Text("--furnace-input", "POWER", "Without a file: as on the plate. [30,000 BTU/h]"),
    ];

    /// <summary>What was given, by the options' names without their dashes.</summary>
    public Dictionary<string, string> Given(ParseResult parsed)
    {
        Dictionary<string, string> given = new(StringComparer.Ordinal);
        foreach (Option<string?> option in Signs)
        {
            if (parsed.GetValue(option) is { } text)
                given[option.Name[2..]] = text;
        }

        return given;
    }

    private static Option<string?> Text(string name, string helpName, string description)
        => CommonOptions.Quantity(name, helpName, description);
}
