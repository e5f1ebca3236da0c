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
    private const int ColdestShown = 5;

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
        double sum = 0, hours = 0, degreeHours = 0;
        ColdRun? run = null, longest = null;
        for (int i = 1; i < rows.Count; i++)
        {
            WeatherRow a = rows[i - 1], b = rows[i];
            double span_h = (b.Time - a.Time).TotalHours;
            sum += (a.Air_K + b.Air_K) / 2 * span_h;
            (double from, double to) = PartBelow(a.Air_K - below_K, b.Air_K - below_K);
            if (to > from)
            {
                double cold_h = span_h * (to - from);
                double atFrom = below_K - (a.Air_K + from * (b.Air_K - a.Air_K)), atTo = below_K - (a.Air_K + to * (b.Air_K - a.Air_K));
                hours += cold_h;
                degreeHours += (atFrom + atTo) / 2 * cold_h;
                double low = Math.Min(a.Air_K, b.Air_K);
                DateTimeOffset end = a.Time.AddHours(span_h * to);
                run = run is not null && from == 0 ? run with { To = end, Low_K = Math.Min(run.Low_K, low) } : new ColdRun(a.Time.AddHours(span_h * from), end, low);
                if (longest is null || run.To - run.From > longest.To - longest.From)
                    longest = run;
            }
            if (to < 1)
                run = null;
        }
        return new WeatherDigest
        {
            Below_K = below_K,
            From = rows[0].Time,
            To = rows[^1].Time,
            Rows = rows.Count,
            Mean_K = sum / (rows[^1].Time - rows[0].Time).TotalHours,
            High_K = rows.Max(r => r.Air_K),
            Coldest = [.. OneANight(rows, clock).OrderBy(r => r.Air_K).ThenBy(r => r.Time).Take(ColdestShown)],
            LongestRun = longest,
            HoursBelow = hours,
            DegreeHours_Kh = degreeHours,
        };
    }

    // Where, from 0 to 1 between two rows, the line lies below zero.
    private static (double From, double To) PartBelow(double a, double b) => (a < 0, b < 0) switch
    {
        (true, true) => (0, 1),
        (false, false) => (0, 0),
        (true, false) => (0, a / (a - b)),
        (false, true) => (a / (a - b), 1),
    };

    private static List<WeatherRow> OneANight(IReadOnlyList<WeatherRow> rows, TimeSpan clock)
    {
        List<WeatherRow> coldest = [];
        DateTime night = default;
        foreach (WeatherRow row in rows)
        {
            DateTime of = (row.Time.ToOffset(clock).DateTime - TimeSpan.FromHours(12)).Date;
            if (of != night)
                coldest.Add(row);
            else if (row.Air_K < coldest[^1].Air_K)
                coldest[^1] = row;
            night = of;
        }
        return coldest;
    }
}
