using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary>Everything that <c>log add</c> takes: the readings of <c>gauge combine</c>, and when and what else.</summary>
internal sealed class LogOptions
{
    private readonly GaugeOptions _gauge = new();

    public Option<string?> At { get; } = new("--at")
    {
        HelpName = "TIME",
        Description = "When it was read, such as 2027-01-13T07:00-07:00; without offset by the scenario's clock. [now]",
    };

    public Option<string?> Cylinder { get; } = new("--cylinder") { HelpName = "NAME", Description = "Which cylinder, where the scenario has several." };

    public Option<string?> Note { get; } = new("--note") { HelpName = "TEXT", Description = "A few words to go with it." };

    public Option<bool> Filled { get; } = new("--filled") { Description = "The cylinder was filled or changed since the last reading." };

    public Option<bool> Checked { get; } = new("--checked") { Description = "You looked again and it is right, though it looks wrong; written beside it, and used." };

    public Option<string?> Tilt { get; } = CommonOptions.Quantity("--tilt", "DEGREES", "How far off level it may be. [1]");

    public Option<string?> PercentOf { get; } = CommonOptions.Quantity("--percent-of", "WORD", "What an echo's percentage is of: height or volume. [height]").Offering("height", "volume");

    public Option<bool> Rested { get; } = new("--rested")
    {
        Description = "The cylinder was closed for hours, or of a voltage: nothing was drawn or charged for hours.",
    };

    public Option<string?> Error { get; } = CommonOptions.Quantity(
        "--error", "E", "Standard error of a measured value. [2 psi, 2 °F, wall 4 °F, 0.05 V]");

    public Option<string?> Temperature => _gauge.Temperature;

    /// <summary>The readings by their method in the log.</summary>
    public IReadOnlyList<(string Method, Option<string[]> Option)> Readings =>
    [
        ("weight", _gauge.Weights), ("line", _gauge.Lines), ("frost-line", _gauge.FrostLines), ("echo-time", _gauge.EchoTimes),
        ("echo-height", _gauge.EchoHeights), ("echo-percent", _gauge.EchoPercents), ("float", _gauge.Floats), .. Measured,
    ];

    /// <summary>What else is measured, by its method in the log.</summary>
    public IReadOnlyList<(string Method, Option<string[]> Option)> Measured { get; } =
    [
        ("pressure", GaugeOptions.Several("--pressure", "P", "Pressure that the cylinder's gauge shows; compared with a run.")),
        ("liquid", GaugeOptions.Several("--liquid", "T", "Temperature of the cylinder's liquid; likewise.")),
        ("wall", GaugeOptions.Several("--wall", "T", "Temperature of its wall, below the liquid's level; likewise.")),
        ("inside", GaugeOptions.Several("--inside", "T", "Temperature of the air inside; likewise.")),
        ("voltage", GaugeOptions.Several("--voltage", "V", "Voltage of the battery; likewise, where it is --rested.")),
    ];

    /// <summary>What becomes a detail of the line, under its own name.</summary>
    public IReadOnlyList<Option<string?>> Details =>
    [
        _gauge.ScaleError, _gauge.Tare, _gauge.TareError, _gauge.Accessories, _gauge.Ice, PercentOf, _gauge.Assumed, _gauge.EchoError,
        _gauge.PositionError, _gauge.Foot, _gauge.LineError, _gauge.FloatError, _gauge.TemperatureError, Tilt, Error,
    ];

    public IEnumerable<Option> All => [.. Readings.Select(r => r.Option), Cylinder, At, Note, Filled, Checked, Temperature, Rested, .. Details];
}
