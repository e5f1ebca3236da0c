namespace ColdSim.Files.Weather;

/// <summary>How a weather file is to be read; nothing stated means: look at the file.</summary>
public sealed record WeatherRequest
{
    /// <summary>The layout; null recognises it.</summary>
    public WeatherFormat? Format { get; init; }

    /// <summary>Offset from UTC of times without one, and the clock on which times in UTC are shown.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>Rows before this are passed over.</summary>
    public WindowEdge? From { get; init; }

    /// <summary>Rows after this are passed over.</summary>
    public WindowEdge? To { get; init; }

    /// <summary>The longest gap that a straight line may bridge.</summary>
    public TimeSpan Bridge { get; init; } = WeatherGaps.Longest;

    /// <summary>The year on which a typical year is put; null chooses one.</summary>
    public int? Year { get; init; }

    /// <summary>Which heading is what, for tables of no known layout.</summary>
    public ColumnMap? Map { get; init; }
}
