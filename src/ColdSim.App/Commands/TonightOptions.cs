using System.CommandLine;
using ColdSim.Model.Gas;

namespace ColdSim.App.Commands;

/// <summary>The options of <c>tonight</c>.</summary>
internal sealed class TonightOptions
{
    public Option<string?> Rig { get; } = new("--rig")
    {
        HelpName = "FILE",
        Description = "Scenario file of your rig; its own weather is used only if it covers tonight. [the rig kept by 'coldsim new --mine', unless --cylinder is given]",
    };

    public Option<string?> Low { get; } = CommonOptions.Quantity("--low", "T", "The night's low, such as \"-8 °F\"; or give --weather.");

    public Option<string?> High { get; } = CommonOptions.Quantity("--high", "T", "The afternoon's high. [18 °F above the low]");

    public Option<string?> Wind { get; } = CommonOptions.Quantity("--wind", "SPEED", "Such as \"5 mph\". [2 m/s]");

    public Option<string?> Weather { get; } = new("--weather")
    {
        HelpName = "FILE",
        Description = "Weather file that covers tonight, in any layout that coldsim reads, instead of --low and --high.",
    };

    public Option<string[]> Cylinder { get; } = Several(
        "--cylinder", "SIZE", "Without a rig: such as \"20 lb\"; several in the order of their use, with commas between or the option again.").OfferingSizes();

    public Option<string[]> Left { get; } = Several(
        "--left", "PART", "What is in it: a part of a full one (1/3, \"40 %\", full) or a mass (\"7 lb\"); one for each cylinder. [with a rig: its log's latest reading, or what its file says]")
        .Offering("full", "3/4", "1/2", "1/3", "1/4");

    public Option<string?> Joined { get; } = CommonOptions.Quantity(
        "--joined", "together|changeover|by-hand", "Without a rig: how several cylinders are joined. [by hand, one open at a time]")
        .Offering("together", "changeover", "by-hand");

    public Option<string?> Blanket { get; } = CommonOptions.Quantity("--blanket", "POWER", "Without a rig: a heated blanket around each cylinder, such as \"90 W\".");

    public Option<string?> Gas { get; } = CommonOptions.Quantity(
        "--gas", "GRADE", "Without a rig: propane, \"special-duty propane\", \"winter blend\" or \"summer blend\". [propane]").Offering(GasGrade.Names);

    public Option<string?> Furnace { get; } = CommonOptions.Quantity(
        "--furnace", "POWER", "Without a rig: its input as on the plate, such as \"25000 BTU/h\".");

    public Option<string?> Length { get; } = CommonOptions.Quantity("--length", "L", "Without a rig: length of the coach. [24 ft]");

    public Option<string> Grade { get; } = CommonOptions.Choice(
        "--grade", "Without a rig: how well it keeps heat.", ["good", "ordinary", "leaky"], unlessGiven: "ordinary");

    public Option<string?> Inside { get; } = CommonOptions.Quantity("--inside", "T", "Thermostat, all night. [62 °F, or the rig's]");

    public Option<string?> WindExposure { get; } = CommonOptions.Quantity(
        "--wind-exposure", "PART", "Without a rig: part of the wind that reaches the cylinder: 1 open to the wind, 0 in a closed box. [0.3]");

    /// <summary>The name that it had before; still read, and shown nowhere.</summary>
    public Option<string?> WindShelter { get; } = new("--wind-shelter") { Hidden = true };

    public Option<string?> Elevation { get; } = CommonOptions.Quantity("--elevation", "H", "Without a rig: above sea level, such as \"5,200 ft\". [0]");

    public Option<string?> Start { get; } = CommonOptions.Quantity("--start", "HH:MM", "When the run starts. [18:00]");

    public Option<bool> Now { get; } = new("--now") { Description = "Start at this moment, and say what the next hour brings." };

    public Option<string?> InsideNow { get; } = CommonOptions.Quantity("--inside-now", "T", "With --now: how warm it is inside. [the thermostat's setting]");

    public StartOptions Log { get; } = new();

    /// <summary>Those that say what a rig's file says too.</summary>
    public IReadOnlyList<Option> OfRig => [Cylinder, Joined, Blanket, Gas, Furnace, Length, Grade, WindExposure, WindShelter, Elevation];

    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[
            Rig, Low, High, Wind, Weather, Left, Inside, Start, Now, InsideNow, Cylinder, Joined, Blanket, Gas, Furnace, Length, Grade, WindExposure, WindShelter, Elevation,
            Log.NoLog, Log.SkipDamaged])
            command.Options.Add(option);
    }

    private static Option<string[]> Several(string name, string helpName, string description) => new(name) { Description = description, HelpName = helpName };
}
