using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.Files.Weather;

/// <summary>The answer of <c>coldsim weather</c>: what a file has, its digest and the night picked.</summary>
public sealed record WeatherFileReport
{
    /// <summary>The file as it was named.</summary>
    public required string File { get; init; }

    /// <summary>The result of reading, without the rows.</summary>
    public required WeatherResult Weather { get; init; }

    /// <summary>How many rows have a value in each column.</summary>
    public required ColumnCounts Counts { get; init; }

    /// <summary>The air temperature at the place over the whole time, or over the night picked.</summary>
    public required IReadOnlyList<AirSlice> Air { get; init; }

    /// <summary>The clock that noon is read from.</summary>
    public required TimeSpan Clock { get; init; }

    /// <summary>The rows summed up.</summary>
    public required WeatherDigest Digest { get; init; }

    /// <summary>The night picked; null where none was asked for.</summary>
    public DesignNight? Night { get; init; }

    /// <summary>What was changed in the weather while reading it.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The rows of the night picked; empty where none was asked for.</summary>
    public IReadOnlyList<WeatherRow> NightRows { get; init; } = [];
}
