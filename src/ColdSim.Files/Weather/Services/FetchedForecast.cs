using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Services;

/// <summary>A forecast as it is written: rows by one clock, and what is known of where they are from.</summary>
internal sealed record FetchedForecast
{
    /// <summary>Who gave it.</summary>
    public required IForecastService Service { get; init; }

    /// <summary>What was asked.</summary>
    public required ForecastQuestion Question { get; init; }

    /// <summary>The document, and where it comes from.</summary>
    public required WebAnswer Answer { get; init; }

    /// <summary>The result of reading it, without rows.</summary>
    public required WeatherResult Weather { get; init; }

    /// <summary>The rows, in order of time.</summary>
    public required IReadOnlyList<WeatherRow> Rows { get; init; }

    /// <summary>What is to be known about it: what it lacks, where it ends, whose clock it has.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}
