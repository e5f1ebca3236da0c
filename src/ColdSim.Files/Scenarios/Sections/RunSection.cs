using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[run]</c>: from when, how long, in what steps.</summary>
/// <param name="Start">When the run starts.</param>
/// <param name="Nights">How many nights; null to the end of the weather.</param>
/// <param name="Step_s">Longest time step.</param>
internal sealed record RunSection(DateTimeOffset Start, int? Nights, double Step_s)
{
    // When people are back and look at the night ahead.
    private const int Afternoon_h = 16;

    private static readonly DateTimeKey StartKey = new(
        "start", DateTimeForm.WithOffset, KeyDefault.Of("the first 16:00 in the weather"),
        "when the run starts; its offset is the run's clock. The offset may be left out where the weather or the place's longitude says it")
    {
        Within = "within the weather",
        Assumed = "run: start not given; assumed {value}",
    };

    private static readonly WholeKey NightsKey = new("nights", 1, 400, KeyDefault.Of("to the end of the weather"), "nights to run, each ending at noon");

    private static readonly QuantityKey Step = new(
        "step", Dimension.Duration, "1 s", "10 min", KeyDefault.Of(Scenario.DefaultStep_s, "s"), "longest time step");

    public static readonly ScenarioSection Declared = new("run", TableForm.One, "from when, how long, in what steps", [StartKey, NightsKey, Step])
    {
        FixedForOptions = true,
    };

    // Rows on both sides of the run are needed for straight lines.
    private static readonly TimeSpan Beside = TimeSpan.FromHours(3);

    private const string AcceptedStart = "accepted: a date and time with offset, without quotes, such as 2025-01-14T16:00:00-07:00";

    /// <summary>The days that the run needs weather for; null where the table does not say them, or is wrong, which reading it reports.</summary>
    /// <param name="section">The table.</param>
    public static (DateTimeOffset From, DateTimeOffset To)? Days(SectionReader section)
    {
        if (!section.Present || section.Value(StartKey) is not TomlDateOrTime { HasDate: true, HasTime: true } start)
            return null;

        // Without an offset it may be any clock's.
        TimeSpan beside = start.HasOffset ? Beside : TimeSpan.FromHours(15);
        DateTimeOffset from = start.HasOffset ? start.Value : new(start.Value.DateTime, TimeSpan.Zero);
        if (from.Year is < CalendarYears.First or > CalendarYears.Last)
            return null;
        DateTimeOffset to = section.Value(NightsKey) is TomlNumber { Whole: true, Value: >= 1 and <= 400 } nights ? EndOf(from, (int)nights.Value).Add(beside) : DateTimeOffset.MaxValue;
        return (from.Subtract(beside), to);
    }

    /// <summary>Reads when the run is.</summary>
    /// <param name="section">The table.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="stops">The stops, which say when the run is where there are any.</param>
    public static RunSection Read(SectionReader section, WeatherSection weather, IReadOnlyList<ReadStop> stops)
    {
        DateTimeOffset? start = ReadStart(section, weather.Clock);
        int? nights = section.Get(NightsKey);
        double step_s = section.GetOrDefault(Step);
        section.Finish();
        if (stops.Count > 0)
            return new RunSection(FirstStop(section, start, stops[0]), null, step_s);
        if (weather.Rows.Count < 2)
            return new RunSection(start ?? default, nights, step_s);
        DateTimeOffset first = weather.Rows[0].Time;
        DateTimeOffset last = weather.Rows[^1].Time;
        if (start is { } written && (written < first || written >= last) && weather.Instead is { } file)
        {
            start = FirstAfternoon(weather, out string which);
            section.Reading.Assume($"run: the start {Shown(written)} lies outside {file}; assumed {which}, {Shown(start.Value)}");
        }
        else if (start is null)
        {
            start = FirstAfternoon(weather, out string which);
            section.Assume(StartKey, "run", $"{which}, {Shown(start.Value)}");
        }
        else if (start < first || start >= last)
        {
            section.Report(StartKey, $"the start {Shown(start.Value)} lies outside the weather", $"accepted: from {Shown(first)} to before {Shown(last)}");
        }
        if (nights is { } count && EndOf(start.Value, count) > last)
            section.Reading.Warn($"run: the weather ends on {Shown(last)}, before night {count} does");
        return new RunSection(start.Value, nights, step_s);
    }

    /// <summary>The offset of the start, where it is written with one.</summary>
    public static TimeSpan? OffsetOfStart(SectionReader section) => section.Value(StartKey) is TomlDateOrTime { HasOffset: true } start ? start.Value.Offset : null;

    // The first 16:00 that has weather after it; where the weather ends before that, its first row.
    private static DateTimeOffset FirstAfternoon(WeatherSection weather, out string which)
    {
        DateTimeOffset first = weather.Rows[0].Time;
        if (weather.Clock is { } clock)
            first = first.ToOffset(clock);
        DateTimeOffset afternoon = new(first.Date.AddHours(Afternoon_h), first.Offset);
        if (afternoon < first)
            afternoon = afternoon.AddDays(1);
        bool inside = afternoon < weather.Rows[^1].Time;
        which = (inside ? "the first 16:00 in the weather" : "the weather's first row") + (weather.IsMeridian ? " by the clock of the meridian" : "");
        return inside ? afternoon : first;
    }

    private static DateTimeOffset FirstStop(SectionReader section, DateTimeOffset? start, ReadStop first)
    {
        if (start is not null && start != first.From)
            section.Report(StartKey, $"the run starts at {Shown(start.Value)} and the first stop begins at {Shown(first.From)}", "accepted: leave 'start' out, the first [[stop]] says it");
        if (section.Has(NightsKey))
            section.Report(NightsKey, "'nights' beside [[stop]]", "accepted: leave 'nights' out, the last [[stop]] says when the run ends");
        return first.From;
    }

    // Nights end at noon by the run's clock.
    private static DateTimeOffset EndOf(DateTimeOffset start, int nights)
    {
        DateTimeOffset noon = new(start.Date.AddHours(12), start.Offset);
        return start < noon ? noon.AddDays(nights - 1) : noon.AddDays(nights);
    }

    private static DateTimeOffset? ReadStart(SectionReader section, TimeSpan? offset)
    {
        switch (section.Value(StartKey))
        {
            case null: return null;
            case TomlDateOrTime { HasOffset: true } instant: return instant.Value;
            case TomlDateOrTime { HasDate: true, HasTime: true } local when offset is { } stated:
                return new DateTimeOffset(local.Value.DateTime, stated);
            case TomlDateOrTime { HasDate: true, HasTime: true } local:
                section.Reading.Report(local.Place, "'start' has no offset from UTC", AcceptedStart);
                return null;
            case { } other:
                section.Reading.Report(other.Place, $"'start' is {other.Kind}", AcceptedStart);
                return null;
        }
    }

    private static string Shown(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture);
}
