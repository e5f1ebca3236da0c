using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>An unbroken run of cold.</summary>
/// <param name="From">When the air falls below the threshold.</param>
/// <param name="To">When it is above it again.</param>
/// <param name="Low_K">The lowest between. [K]</param>
public sealed record ColdRun(DateTimeOffset From, DateTimeOffset To, double Low_K);

/// <summary>A record at a glance.</summary>
public sealed record WeatherDigest
{
    /// <summary>Below this it counts as cold. [K]</summary>
    public required double Below_K { get; init; }

    /// <summary>First row.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>Last row.</summary>
    public required DateTimeOffset To { get; init; }

    /// <summary>Number of rows.</summary>
    public required int Rows { get; init; }

    /// <summary>Mean over time. [K]</summary>
    public required double Mean_K { get; init; }

    /// <summary>Highest row. [K]</summary>
    public required double High_K { get; init; }

    /// <summary>The coldest rows, one from noon to noon, coldest first.</summary>
    public required IReadOnlyList<WeatherRow> Coldest { get; init; }

    /// <summary>The longest run below the threshold; null where it is never below.</summary>
    public required ColdRun? LongestRun { get; init; }

    /// <summary>Hours below the threshold.</summary>
    public required double HoursBelow { get; init; }

    /// <summary>Kelvins below the threshold times hours. [K·h]</summary>
    public required double DegreeHours_Kh { get; init; }

    /// <summary>Looks through a record; the air is on straight lines between its rows.</summary>
    /// <param name="rows">Two or more, in order of time.</param>
    /// <param name="clock">The offset of the clock that noon is read from.</param>
    /// <param name="below_K">The threshold. [K]</param>
    public static WeatherDigest Of(IReadOnlyList<WeatherRow> rows, TimeSpan clock, double below_K)
    {
        ArgumentNullException.ThrowIfNull(rows);
        RunningDigest digest = new(clock, below_K);
        foreach (WeatherRow row in rows)
            digest.Add(row);
        return digest.Read();
    }
}
