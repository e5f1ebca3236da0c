using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary>The options of <c>tonight</c>.</summary>
internal sealed class TonightOptions
{
    public Option<string?> Low { get; } = CommonOptions.Quantity("--low", "T", "The night's low, such as \"-8 °F\".", required: true);

    public Option<string?> Cylinder { get; } = CommonOptions.Quantity("--cylinder", "SIZE", "Such as \"20 lb\".", required: true);

    public Option<string?> Left { get; } = CommonOptions.Quantity(
        "--left", "PART", "What is in it: a part of a full one (1/3, \"40 %\") or a mass (\"7 lb\").", required: true);

    public Option<string?> Furnace { get; } = CommonOptions.Quantity(
        "--furnace", "POWER", "Its input as on the plate, such as \"25000 BTU/h\".", required: true);

    public Option<string?> Length { get; } = CommonOptions.Quantity("--length", "L", "Length of the coach. [24 ft]");

    public Option<string> Grade { get; } = CommonOptions.Choice(
        "--grade", "How well it keeps heat.", ["good", "ordinary", "leaky"], unlessGiven: "ordinary");

    public Option<string?> Inside { get; } = CommonOptions.Quantity("--inside", "T", "Thermostat, all night. [62 °F]");

    public Option<string?> High { get; } = CommonOptions.Quantity("--high", "T", "The afternoon's high. [18 °F above the low]");

    public Option<string?> Wind { get; } = CommonOptions.Quantity("--wind", "SPEED", "Such as \"5 mph\". [2 m/s]");

    public Option<string?> WindShelter { get; } = CommonOptions.Quantity(
        "--wind-shelter", "PART", "Part of the wind that reaches the cylinder: 0 in a closed locker, 1 in the open. [0.3]");

    public Option<string?> Elevation { get; } = CommonOptions.Quantity("--elevation", "H", "Above sea level, such as \"5,200 ft\". [0]");

    public Option<string?> Start { get; } = CommonOptions.Quantity("--start", "HH:MM", "When the run starts. [18:00]");

    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[Low, Cylinder, Left, Furnace, Length, Grade, Inside, High, Wind, WindShelter, Elevation, Start])
            command.Options.Add(option);
    }
}
