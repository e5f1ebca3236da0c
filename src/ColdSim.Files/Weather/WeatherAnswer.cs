using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.Files.Weather;

/// <summary>What is told of a weather file.</summary>
public sealed record WeatherAnswer
{
    /// <summary>The file as it was named.</summary>
    public required string File { get; init; }

    /// <summary>What reading gave, without the rows.</summary>
    public required WeatherResult Weather { get; init; }

    /// <summary>What the rows have.</summary>
    public required ColumnCounts Has { get; init; }

    /// <summary>Air over time at the place: all of it, or in the night picked.</summary>
    public required IReadOnlyList<AirSlice> Air { get; init; }

    /// <summary>The clock that noon is read from.</summary>
    public required TimeSpan Clock { get; init; }

    /// <summary>The rows at a glance.</summary>
    public required WeatherDigest Digest { get; init; }

    /// <summary>The night picked; null where none was asked for.</summary>
    public DesignNight? Night { get; init; }

    /// <summary>What was done to the weather on the way.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The rows of the night picked; empty where none was asked for.</summary>
    public IReadOnlyList<WeatherRow> NightRows { get; init; } = [];
}
