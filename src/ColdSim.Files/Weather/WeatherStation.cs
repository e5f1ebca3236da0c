namespace ColdSim.Files.Weather;

/// <summary>What a weather file says of itself: where it was measured or computed, its clock, when it was issued. What it does not say is null.</summary>
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

    /// <summary>The offset from UTC of the place's clock; null where the file is in UTC and does not say what the clock there shows.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>When a forecast was issued.</summary>
    public DateTimeOffset? Issued { get; init; }
}
