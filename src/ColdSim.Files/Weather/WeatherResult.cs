using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>What came of reading a weather file.</summary>
public sealed record WeatherResult
{
    /// <summary>The rows in order of time; empty where there are problems.</summary>
    public required IReadOnlyList<WeatherRow> Rows { get; init; }

    /// <summary>What is wrong, in order of place.</summary>
    public required IReadOnlyList<FileProblem> Problems { get; init; }

    /// <summary>Columns that were left aside.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>Gaps that were bridged and empty cells that were filled in; the report names them.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}
