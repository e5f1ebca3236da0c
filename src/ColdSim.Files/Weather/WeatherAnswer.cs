using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.Files.Weather;

/// <summary>What is told of a weather file.</summary>
public sealed record WeatherAnswer
{
    /// <summary>The file as it was named.</summary>
    public required string File { get; init; }

    /// <summary>What reading gave.</summary>
    public required WeatherResult Weather { get; init; }

    /// <summary>The rows as they are at the place.</summary>
    public required IReadOnlyList<WeatherRow> Rows { get; init; }

    /// <summary>The clock that noon is read from.</summary>
    public required TimeSpan Clock { get; init; }

    /// <summary>The rows at a glance.</summary>
    public required WeatherDigest Digest { get; init; }

    /// <summary>The night picked; null where none was asked for.</summary>
    public DesignNight? Night { get; init; }

    /// <summary>What was done to the weather on the way.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The rows of the night picked, or all.</summary>
    public IReadOnlyList<WeatherRow> Chosen => Night is { Night: var night } ? [.. Rows.Skip(night.FirstRow).Take(night.LastRow - night.FirstRow + 1)] : Rows;
}
