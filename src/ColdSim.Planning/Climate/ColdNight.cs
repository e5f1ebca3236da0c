using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>A night of a record, from noon to noon.</summary>
/// <param name="From">The noon before.</param>
/// <param name="To">The noon after.</param>
/// <param name="Mean_K">Mean air temperature between the two. [K]</param>
/// <param name="Low_K">Lowest air temperature. [K]</param>
/// <param name="LowAt">When that was.</param>
/// <param name="FirstRow">The record's row at or before the noon before.</param>
/// <param name="LastRow">The record's row at or after the noon after.</param>
public sealed record ColdNight(DateTimeOffset From, DateTimeOffset To, double Mean_K, double Low_K, DateTimeOffset LowAt, int FirstRow, int LastRow)
{
    /// <summary>The calendar day on whose evening it begins.</summary>
    public DateOnly Evening => DateOnly.FromDateTime(From.DateTime);

    /// <summary>The winter it belongs to, named after the year in which it begins; winters go from July to June.</summary>
    public int Winter => Evening.Month >= 7 ? Evening.Year : Evening.Year - 1;
}

/// <summary>The whole nights of a record.</summary>
public static class ColdNights
{
    /// <summary>Every night that lies wholly within the rows, in order of time.</summary>
    /// <param name="rows">In order of time; straight lines between them.</param>
    /// <param name="clock">The offset of the clock that noon is read from.</param>
    public static IReadOnlyList<ColdNight> Of(IReadOnlyList<WeatherRow> rows, TimeSpan clock)
    {
        ArgumentNullException.ThrowIfNull(rows);
        RunningNights nights = new(clock);
        foreach (WeatherRow row in rows)
            nights.Add(row);
        return nights.Nights;
    }
}
