using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary>Everything that the subcommands of <c>gauge</c> take; each takes its part.</summary>
internal sealed class GaugeOptions
{
    // The cylinder.
    public Option<string?> Cylinder { get; } = CommonOptions.Quantity("--cylinder", "SIZE", "A common size, such as \"20 lb\" or \"10 gal\".").OfferingSizes();

    public Option<string?> WaterCapacity { get; } = CommonOptions.Quantity(
        "--water-capacity", "WC", "Instead of a size: water capacity as stamped (\"47.6 lb\") or a volume (\"21.6 L\").");

    public Option<string?> Diameter { get; } = CommonOptions.Quantity("--diameter", "D", "With --water-capacity: outside diameter.");

    public Option<string> Orientation { get; } = CommonOptions.Choice(
        "--orientation", "With --water-capacity: upright or lying.", ["upright", "horizontal"], unlessGiven: "upright");

    public Option<string?> Wall { get; } = CommonOptions.Quantity("--wall", "L", "With --water-capacity: wall thickness. [2.1 mm]");

    // What is known besides.
    public Option<string?> Temperature { get; } = CommonOptions.Quantity("--temperature", "T", "The liquid's own temperature.");

    public Option<string?> TemperatureError { get; } = CommonOptions.Quantity(
        "--temperature-error", "DT", "Its standard uncertainty. [4 °F rested, 9 °F otherwise]");

    public Option<bool> Rested { get; } = new("--rested")
    {
        Description = "The cylinder has been closed for hours and is as warm as its surroundings.",
    };

    public Option<double?> Tilt { get; } = CommonOptions.Number("--tilt", "DEGREES", "How far off level it may be. [1]", 0, 15, whole: false);

    public Option<string?> OffMiddle { get; } = CommonOptions.Quantity(
        "--off-middle", "L", "Lying tank: how far from its middle it is read. [a quarter of its straight part]");

    public Option<string?> Furnace { get; } = CommonOptions.Quantity("--furnace", "POWER", "Furnace input, for hours at full fire.");

    // Weight.
    public Option<string?> Scale { get; } = CommonOptions.Quantity("--scale", "M", "What the scale shows.");

    public Option<string?> ScaleError { get; } = CommonOptions.Quantity("--scale-error", "M", "Its standard uncertainty. [0.2 lb]");

    public Option<string?> Tare { get; } = CommonOptions.Quantity("--tare", "M", "Empty mass as stamped on the collar (TW).");

    public Option<string?> TareError { get; } = CommonOptions.Quantity("--tare-error", "M", "Its standard uncertainty. [1.5 % of it]");

    public Option<string?> Accessories { get; } = CommonOptions.Quantity("--accessories", "M", "What else is on the scale.");

    public Option<string?> Ice { get; } = CommonOptions.Quantity("--ice", "M", "Ice and snow on the cylinder.");

    // Echo.
    public Option<string?> Time { get; } = CommonOptions.Quantity("--time", "T", "Time of flight there and back, such as \"230 us\".");

    public Option<string?> EchoHeight { get; } = CommonOptions.Quantity("--height", "H", "The height that the sensor shows.");

    public Option<string?> EchoPercent { get; } = CommonOptions.Quantity("--percent", "PART", "The percentage that the sensor shows.");

    public Option<string> PercentOf { get; } = CommonOptions.Choice(
        "--percent-of", "What the percentage is of: of the height or volume inside, or of the height of a full one's level (80 % of the volume).", ["height", "volume", "full"], unlessGiven: "height");

    public Option<string?> Assumed { get; } = CommonOptions.Quantity(
        "--assumed-temperature", "T", "The liquid temperature for which the sensor reckons. [20 °C]");

    public Option<string?> EchoError { get; } = CommonOptions.Quantity(
        "--echo-error", "E", "Standard uncertainty of the number, in its own unit. [2 us, 0.1 in or 1 %]");

    public Option<string?> PositionError { get; } = CommonOptions.Quantity(
        "--position-error", "L", "How far off the lowest point the sensor may sit. [1 in]");

    // Line.
    public Option<string?> LineHeight { get; } = CommonOptions.Quantity("--height", "H", "Height of the line above the lowest point of the body.");

    public Option<string> LineBy { get; } = CommonOptions.Choice("--by", "What showed it.", ["water", "frost"], unlessGiven: "water");

    public Option<string?> Foot { get; } = CommonOptions.Quantity("--foot", "H", "Height of that lowest point, if the line was measured from the ground. [0]");

    public Option<string?> LineError { get; } = CommonOptions.Quantity("--line-error", "L", "Standard uncertainty of the line. [water 0.25 in, frost 1 in]");

    // Float.
    public Option<string?> FloatPercent { get; } = CommonOptions.Quantity("--percent", "PART", "What the float gauge shows.");

    public Option<string?> FloatError { get; } = CommonOptions.Quantity("--float-error", "PART", "Its standard uncertainty. [3 %]");

    // Pressure.
    public Option<string?> Pressure { get; } = CommonOptions.Quantity("--pressure", "P", "Gauge pressure at the cylinder.");

    public Option<string?> PressureError { get; } = CommonOptions.Quantity("--pressure-error", "P", "Its standard uncertainty. [2 psi]");

    public Option<string?> Elevation { get; } = CommonOptions.Quantity("--elevation", "H", "Above sea level. [0]");

    // Several readings; each option may be given several times.
    public Option<string[]> Weights { get; } = Several("--weight", "M", "A scale reading.");

    public Option<string[]> Lines { get; } = Several("--line", "H", "Height of a line shown by hot water.");

    public Option<string[]> FrostLines { get; } = Several("--frost-line", "H", "Height of the frost's edge.");

    public Option<string[]> EchoTimes { get; } = Several("--echo-time", "T", "Time of flight.");

    public Option<string[]> EchoHeights { get; } = Several("--echo-height", "H", "A height that a sensor shows.");

    public Option<string[]> EchoPercents { get; } = Several("--echo-percent", "PART", "A percentage that a sensor shows.");

    public Option<string[]> Heights { get; } = Several("--level", "PART", "A level in percent of the height inside, as a strip, sight or dial shows it.");

    public Option<string?> HeightError { get; } = CommonOptions.Quantity("--level-error", "PART", "Its standard uncertainty. [2 %]");

    public Option<string[]> Floats { get; } = Several("--float", "PART", "A float gauge's percentage.");

    internal static Option<string[]> Several(string name, string helpName, string description) => new(name)
    {
        Description = description + " May be given again.",
        HelpName = helpName,
        AllowMultipleArgumentsPerToken = false,
        Arity = ArgumentArity.OneOrMore,
    };

    public IEnumerable<Option> OfCylinder => [Cylinder, WaterCapacity, Diameter, Orientation, Wall];

    public IEnumerable<Option> OfLevel => [Temperature, TemperatureError, Rested, Tilt, OffMiddle];

    public IEnumerable<Option> OfWeight => [ScaleError, Tare, TareError, Accessories, Ice];

    public IEnumerable<Option> OfEcho => [PercentOf, Assumed, PositionError];
}
