using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>What came of reading a weather file.</summary>
public sealed record WeatherResult
{
    /// <summary>The rows in order of time; empty where there are problems.</summary>
    public required IReadOnlyList<WeatherRow> Rows { get; init; }

    /// <summary>What is wrong, in order of place.</summary>
    public required IReadOnlyList<FileProblem> Problems { get; init; }

    /// <summary>What was bridged, filled in or left aside.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>How many rows lack the value for good: it was neither written nor could it be filled in.</summary>
    public int Without(Func<WeatherRow, double?> value) => Rows.Count(r => value(r) is null);
}
