namespace ColdSim.Files.Weather;

/// <summary>How a weather file is to be read; what is not stated is taken from the file.</summary>
public sealed record WeatherRequest
{
    /// <summary>The layout; null detects it.</summary>
    public WeatherFormat? Format { get; init; }

    /// <summary>Offset from UTC of times without one, and the clock on which times in UTC are shown.</summary>
    public TimeSpan? Offset { get; init; }

    /// <summary>Rows before this are skipped.</summary>
    public WindowEdge? From { get; init; }

    /// <summary>Rows after this are skipped.</summary>
    public WindowEdge? To { get; init; }

    /// <summary>The days of a run: faults and gaps outside them refuse nothing. Null where every row is wanted.</summary>
    public (DateTimeOffset From, DateTimeOffset To)? Wanted { get; init; }

    /// <summary>Whether a row lies outside the window or the days wanted.</summary>
    internal bool IsUnwanted(DateTimeOffset time)
        => From?.CompareTo(time) > 0 || To?.CompareTo(time) < 0 || (Wanted is { } wanted && (time < wanted.From || time > wanted.To));

    /// <summary>The longest gap that a straight line may bridge.</summary>
    public TimeSpan Bridge { get; init; } = WeatherGaps.Longest;

    /// <summary>The year on which a typical year is put; null chooses one.</summary>
    public int? Year { get; init; }

    /// <summary>The meaning of the headings, for tables of no known layout.</summary>
    public ColumnMap? Map { get; init; }

    /// <summary>The position whose weather is wanted, of a file that holds several places; null for a file of one.</summary>
    public (double Latitude_deg, double Longitude_deg)? Near { get; init; }

    /// <summary>The most rows to keep: of a file with more, the coldest of each stretch; null keeps all.</summary>
    public int? MostRows { get; init; }
}
