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

    public Option<bool> Rested => _gauge.Rested;

    public Option<string?> Temperature => _gauge.Temperature;

    /// <summary>The readings by their method in the log.</summary>
    public IReadOnlyList<(string Method, Option<string[]> Option)> Readings =>
    [
        ("weight", _gauge.Weights), ("line", _gauge.Lines), ("frost-line", _gauge.FrostLines), ("echo-time", _gauge.EchoTimes),
        ("echo-height", _gauge.EchoHeights), ("echo-percent", _gauge.EchoPercents), ("float", _gauge.Floats),
    ];

    /// <summary>What becomes a detail of the line, under its own name.</summary>
    public IReadOnlyList<Option<string?>> Details =>
    [
        _gauge.ScaleError, _gauge.Tare, _gauge.TareError, _gauge.Accessories, _gauge.Ice, PercentOf, _gauge.Assumed, _gauge.EchoError,
        _gauge.PositionError, _gauge.Foot, _gauge.LineError, _gauge.FloatError, _gauge.TemperatureError, Tilt,
    ];

    public IEnumerable<Option> All => [.. Readings.Select(r => r.Option), Cylinder, At, Note, Filled, Checked, Temperature, Rested, .. Details];
}
