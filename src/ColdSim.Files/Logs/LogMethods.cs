namespace ColdSim.Files.Logs;

/// <summary>The methods of reading that a log accepts, and the details that each may have.</summary>
internal static class LogMethods
{
    /// <summary>The cylinder was filled or changed since the reading before.</summary>
    public const string Filled = "filled";

    /// <summary>The person looked again, and the reading is used although it looks wrong.</summary>
    public const string Checked = "checked";

    /// <summary>The cylinder, or the battery, was at rest for hours.</summary>
    public const string Rested = "rested";

    /// <summary>The standard error of a measured value.</summary>
    public const string Error = "error";

    private static readonly string[] Level = ["temperature-error", Rested, "tilt"];

    private static readonly string[] Echo = ["echo-error", "assumed-temperature", "position-error", .. Level];

    /// <summary>Methods that read what a cylinder holds, named as the options of <c>coldsim gauge combine</c> are.</summary>
    public static IReadOnlyList<string> OfContents { get; } = ["weight", "line", "frost-line", "echo-time", "echo-height", "echo-percent", "float"];

    /// <summary>All of them: those of contents, then what else is measured.</summary>
    public static IReadOnlyList<string> All { get; } = [.. OfContents, .. MeasuredMethod.All.Select(m => m.Name)];

    /// <summary>The details that a line of a method may have.</summary>
    public static IReadOnlyList<string> DetailsOf(string method) => method switch
    {
        "weight" => ["scale-error", "tare", "tare-error", "accessories", "ice", Filled, Checked],
        "line" or "frost-line" => ["line-error", "foot", .. Level, Filled, Checked],
        "echo-time" or "echo-height" => [.. Echo, Filled, Checked],
        "echo-percent" => ["percent-of", .. Echo, Filled, Checked],
        "float" => ["float-error", .. Level, Filled, Checked],
        _ when MeasuredMethod.Of(method) is { } measured => measured.Details,
        _ => [],
    };

    /// <summary>Whether a detail is a word without a value.</summary>
    public static bool IsWord(string detail) => detail is Filled or Checked or Rested;

    /// <summary>Whether the method reads a level, which needs the liquid's temperature.</summary>
    public static bool ReadsLevel(string method) => method != "weight" && MeasuredMethod.Of(method) is null;
}
