namespace ColdSim.Files.Scenarios.Starters;

/// <summary>A cylinder of a scenario to begin with, as it is written.</summary>
/// <param name="Size">Its size, such as "20 lb".</param>
/// <param name="Left">What is in it, such as "80 %".</param>
public sealed record StarterCylinder(string Size, string Left);

/// <summary>What a scenario to begin with says of a rig, each as it is written in the file; null where it is not known.</summary>
public sealed record StarterRig
{
    /// <summary>What is in a cylinder of which nothing is said.</summary>
    public const string UsualLeft = "80 %";

    /// <summary>The rigs that can be asked for by a word.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["two-cylinders", "changeover", "battery", "pipes"];

    /// <summary>The rig of somebody of whom nothing is known but the units.</summary>
    /// <param name="metric">Whether by the kilogram and in degrees Celsius.</param>
    public static StarterRig Unknown(bool metric) => !metric ? new() : new()
    {
        IsMetric = true,
        Length = "7 m",
        Cylinders = [new("11 kg", UsualLeft)],
        Furnace = "6 kW",
        Day = "20 °C",
        Night = "16 °C",
    };

    /// <summary>Whether examples in the file are metric.</summary>
    public bool IsMetric { get; init; }

    /// <summary>What the place is called.</summary>
    public string? Place { get; init; }

    /// <summary>Its height above the sea.</summary>
    public string? Elevation { get; init; }

    /// <summary>The coach's length.</summary>
    public string Length { get; init; } = "24 ft";

    /// <summary>How well it keeps heat.</summary>
    public string Grade { get; init; } = "ordinary";

    /// <summary>The cylinders, in the order of use.</summary>
    public IReadOnlyList<StarterCylinder> Cylinders { get; init; } = [new("20 lb", UsualLeft)];

    /// <summary>How several are joined: "by hand", "changeover" or "together".</summary>
    public string Joined { get; init; } = "by hand";

    /// <summary>Where they are: a kind of <c>[enclosure]</c>; null where nothing is known.</summary>
    public string? CylindersAt { get; init; }

    /// <summary>The furnace's input.</summary>
    public string Furnace { get; init; } = "25,000 BTU/h";

    /// <summary>The set point by day.</summary>
    public string Day { get; init; } = "68 °F";

    /// <summary>The set point by night.</summary>
    public string Night { get; init; } = "61 °F";

    /// <summary>The battery's chemistry; null for no battery.</summary>
    public string? Chemistry { get; init; }

    /// <summary>Its capacity.</summary>
    public string Capacity { get; init; } = "100 Ah";

    /// <summary>How many people.</summary>
    public string People { get; init; } = "2";

    /// <summary>When somebody is up.</summary>
    public string Awake { get; init; } = "06:30-22:30";

    /// <summary>Whether pipes and a tank that could freeze are written.</summary>
    public bool HasPipes { get; init; }

    /// <summary>The nights' lows; empty for a weather file or invented weather.</summary>
    public IReadOnlyList<string> Lows { get; init; } = [];

    /// <summary>A weather file that is there; null for one that is written beside.</summary>
    public string? WeatherFile { get; init; }

    /// <summary>The rig of a word.</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="metric">Whether by the kilogram and in degrees Celsius.</param>
    public static StarterRig OfKind(string kind, bool metric = false)
    {
        StarterRig rig = Unknown(metric);
        string size = metric ? "11 kg" : "30 lb";
        StarterCylinder[] two = [new(size, UsualLeft), new(size, "full")];
        return kind switch
        {
            "two-cylinders" => rig with { Cylinders = two },
            "changeover" => rig with { Cylinders = two, Joined = "changeover" },
            "battery" => rig with { Chemistry = "agm", Capacity = "200 Ah" },
            "pipes" => rig with { HasPipes = true },
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
    }
}
