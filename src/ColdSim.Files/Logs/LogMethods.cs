namespace ColdSim.Files.Logs;

/// <summary>The methods of reading that a log accepts, and the details that each may have.</summary>
public static class LogMethods
{
    /// <summary>The cylinder was filled or changed since the reading before.</summary>
    public const string Filled = "filled";

    private static readonly string[] Level = ["temperature-error", "rested", "tilt"];

    private static readonly string[] Echo = ["echo-error", "assumed-temperature", "position-error", .. Level];

    /// <summary>Their names, as the options of <c>coldsim gauge combine</c> are called.</summary>
    public static IReadOnlyList<string> All { get; } = ["weight", "line", "frost-line", "echo-time", "echo-height", "echo-percent", "float"];

    /// <summary>The details that a line of a method may have.</summary>
    public static IReadOnlyList<string> DetailsOf(string method) => method switch
    {
        "weight" => ["scale-error", "tare", "tare-error", "accessories", "ice", Filled],
        "line" or "frost-line" => ["line-error", "foot", .. Level, Filled],
        "echo-time" or "echo-height" => [.. Echo, Filled],
        "echo-percent" => ["percent-of", .. Echo, Filled],
        "float" => ["float-error", .. Level, Filled],
        _ => [],
    };

    /// <summary>Whether the method reads a level, which needs the liquid's temperature.</summary>
    public static bool ReadsLevel(string method) => method != "weight";
}
