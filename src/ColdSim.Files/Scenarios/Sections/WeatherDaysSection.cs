using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Weather;
using ColdSim.Planning.Quick;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[weather.day]]</c>: a day of weather in place of a file, as a forecast gives it.</summary>
internal static class WeatherDaysSection
{
    private const int Most = 100;

    private static readonly DateKey Date = new("date", KeyDefault.Needed, "the day; each the day after the one before it");

    private static readonly QuantityKey Low = new("low", Dimension.Temperature, "-90 °C", "60 °C", KeyDefault.Needed, "of its morning, at 07:00");

    private static readonly QuantityKey High = new("high", Dimension.Temperature, "-90 °C", "60 °C", KeyDefault.Needed, "of its afternoon, at 15:00");

    private static readonly QuantityKey Wind = new("wind", Dimension.Speed, "0 m/s", "60 m/s", KeyDefault.Of("`[weather]`'s"), "all day");

    private static readonly QuantityKey Cloud = new("cloud", Dimension.Ratio, "0", "1", KeyDefault.Of("`[weather]`'s"), "all day");

    public static readonly ScenarioSection Declared = new(
        "day", TableForm.Many, "a day of weather in place of a file, as a forecast gives it; two or more", [Date, Low, High, Wind, Cloud])
    {
        Most = Most,
        FixedForOptions = true,
    };

    /// <summary>The days; empty where there are none or one of them is faulty.</summary>
    /// <param name="sections">The tables.</param>
    public static IReadOnlyList<WeatherDay> Read(IReadOnlyList<SectionReader> sections)
    {
        List<WeatherDay> days = [];
        bool good = sections.Count > 1;
        foreach (SectionReader section in sections)
        {
            if (Day(section) is not { } day)
            {
                good = false;
                continue;
            }

            bool ascends = day.High_K >= day.Low_K, follows = days.Count == 0 || day.Date == days[^1].Date.AddDays(1);
            if (!ascends)
                section.Report(High, "'high' is below 'low'", "accepted: the warmest of the day");
            if (!follows)
                section.Report(
                    Date, FormattableString.Invariant($"{day.Date:yyyy-MM-dd} does not follow {days[^1].Date:yyyy-MM-dd}"),
                    FormattableString.Invariant($"accepted: {days[^1].Date.AddDays(1):yyyy-MM-dd}; every day in order"));
            good &= ascends && follows;
            days.Add(day);
        }

        if (sections.Count > Most)
            sections[Most].Reading.Report(sections[Most].Place, FormattableString.Invariant($"{sections.Count} days"), FormattableString.Invariant($"accepted: up to {Most}"));
        else if (sections.Count == 1)
            sections[0].Reading.Report(sections[0].Place, "one day only", "accepted: two or more; a night needs the next morning's low");
        return good && sections.Count <= Most ? days : [];
    }

    /// <summary>Their hours.</summary>
    /// <param name="days">Two or more days.</param>
    /// <param name="reading">What the reading gathers.</param>
    /// <param name="offset">The offset of the place's clock; null where nothing says it.</param>
    /// <param name="longitude_deg">Where the place is, for its meridian's clock; null where that is not given. [°]</param>
    public static WeatherResult Hours(IReadOnlyList<WeatherDay> days, Reading reading, TimeSpan? offset, double? longitude_deg)
    {
        const string shape = "each low at 07:00, each high at 15:00, half a cosine between them; wind and cloud the same all day";
        reading.Assume($"weather: made of {days.Count} days: {shape}; from midnight to noon of the last day");
        TimeSpan clock = offset ?? (longitude_deg is { } east ? MeridianClock.Of(east) : TimeSpan.Zero);
        return new() { Rows = DayShape.Rows(days, clock), Problems = [], Warnings = [], Notes = [], Station = new() { Offset = clock } };
    }

    private static WeatherDay? Day(SectionReader section)
    {
        if (!section.Has(Date))
            section.Lacks(Date, "accepted: a date, without quotes, such as 2031-01-14");
        DateOnly? date = section.Get(Date);
        double low_K = section.Require(Low), high_K = section.Require(High);
        double? wind_m_s = section.Get(Wind), cloud_frac = section.Get(Cloud);
        section.Finish();
        return date is null || double.IsNaN(low_K) || double.IsNaN(high_K) ? null : new(date.Value, low_K, high_K, wind_m_s, cloud_frac);
    }
}
