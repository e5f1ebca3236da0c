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
    private const int Noon = 12;

    /// <summary>Every night that lies wholly within the rows, in order of time.</summary>
    /// <param name="rows">In order of time; straight lines between them.</param>
    /// <param name="clock">The offset of the clock that noon is read from.</param>
    public static IReadOnlyList<ColdNight> Of(IReadOnlyList<WeatherRow> rows, TimeSpan clock)
    {
        ArgumentNullException.ThrowIfNull(rows);
        List<ColdNight> nights = [];
        if (rows.Count < 2)
            return nights;
        DateTimeOffset first = rows[0].Time.ToOffset(clock);
        DateTimeOffset noon = new(first.Date.AddHours(Noon), clock);
        if (noon < first)
            noon = noon.AddDays(1);
        int row = 0;
        for (; noon.AddDays(1) <= rows[^1].Time; noon = noon.AddDays(1))
        {
            while (rows[row + 1].Time <= noon)
                row++;
            nights.Add(Night(rows, row, noon));
        }
        return nights;
    }

    private static ColdNight Night(IReadOnlyList<WeatherRow> rows, int row, DateTimeOffset from)
    {
        DateTimeOffset to = from.AddDays(1);
        int first = row;
        double sum = 0;
        (double Air_K, DateTimeOffset At) low = (double.PositiveInfinity, from);
        DateTimeOffset time = from;
        while (time < to)
        {
            DateTimeOffset end = rows[row + 1].Time < to ? rows[row + 1].Time : to;
            double a = AirBetween.At(rows[row], rows[row + 1], time), b = AirBetween.At(rows[row], rows[row + 1], end);
            sum += (a + b) / 2 * (end - time).TotalHours;
            low = a < low.Air_K ? (a, time) : low;
            low = b < low.Air_K ? (b, end) : low;
            time = end;
            if (time < to)
                row++;
        }
        return new ColdNight(from, to, sum / (to - from).TotalHours, low.Air_K, low.At.ToOffset(from.Offset), first, row + 1);
    }
}
