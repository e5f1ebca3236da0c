using ColdSim.Files.Weather;

namespace ColdSim.Files.Scenarios;

/// <summary>A weather file that takes the place of the one that a scenario names.</summary>
/// <remarks>What the scenario says of its own file (layout, column map, window, year, station, anemometer) is not used for it.</remarks>
/// <param name="File">As it was named.</param>
/// <param name="Source">Opens it.</param>
public sealed record WeatherInstead(string File, IWeatherSource Source)
{
    /// <summary>Offset from UTC of times without one, where the scenario gives none; null asks for it where it is needed.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>Rows before this are skipped; null reads from its beginning.</summary>
    public WindowEdge? From { get; init; }

    /// <summary>Rows after this are skipped; null reads to its end.</summary>
    public WindowEdge? To { get; init; }
}
