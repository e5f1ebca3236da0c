namespace ColdSim.Files.Weather;

/// <summary>The place where a file's weather was measured or computed; what the file does not give is null.</summary>
public sealed record WeatherStation
{
    /// <summary>Its number or code.</summary>
    public string? Id { get; init; }

    public string? Name { get; init; }

    /// <summary>North positive. [°]</summary>
    public double? Latitude_deg { get; init; }

    /// <summary>East positive. [°]</summary>
    public double? Longitude_deg { get; init; }

    /// <summary>Above the sea. [m]</summary>
    public double? Elevation_m { get; init; }
}
