using System.Globalization;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>A stop as it was read.</summary>
/// <param name="Stop">The stop.</param>
/// <param name="Place">Where its header is.</param>
/// <param name="Weather">Its weather as it was read.</param>
internal sealed record ReadStop(TripStop Stop, TextPlace Place, WeatherSection Weather)
{
    public DateTimeOffset From => Stop.From;

    public DateTimeOffset To => Stop.To;
}

/// <summary><c>[[stop]]</c>: where the coach is from when to when.</summary>
internal static class StopsSection
{
    private const int Most = 100;

    private static readonly TextKey Name = new("name", KeyDefault.Of("\"stop 1\""), "what it is called") { Such = "Campground" };

    private static readonly DateTimeKey From = new("from", DateTimeForm.DateAndTime, KeyDefault.Needed, "when the coach is there and set up")
    {
        Within = "within its weather",
        FixedForOptions = true,
    };

    private static readonly DateTimeKey To = new("to", DateTimeForm.DateAndTime, KeyDefault.Needed, "when it leaves")
    {
        Within = "within its weather, after `from`",
        FixedForOptions = true,
    };

    public static readonly ScenarioSection Declared = new(
        "stop", TableForm.Many, "where the coach is from when to when",
        [
            Name, From, To, PlaceSection.OfStop.Elevation, PlaceSection.OfStop.Latitude, PlaceSection.OfStop.Longitude, PlaceSection.OfStop.Hookup,
            PlaceSection.OfStop.GroundAlbedo,
        ],
        WeatherSection.Declared)
    {
        Most = Most,
    };

    /// <summary>The stops in the order written; empty where one of them is faulty.</summary>
    /// <param name="root">The top level.</param>
    /// <param name="place">What a stop does not say of its place.</param>
    /// <param name="weather">The weather of a stop without its own.</param>
    /// <param name="source">Opens the stops' weather files.</param>
    public static IReadOnlyList<ReadStop> Read(SectionReader root, GivenPlace place, WeatherSection weather, WeatherOnce source)
    {
        IReadOnlyList<SectionReader> sections = root.Sections(Declared);
        if (sections.Count > Most)
            root.Reading.Report(sections[Most].Place, FormattableString.Invariant($"{sections.Count} stops"), FormattableString.Invariant($"accepted: up to {Most}"));
        TimeSpan? offset = OffsetOf(weather);
        List<ReadStop> stops = [];
        foreach (SectionReader section in sections)
        {
            if (Read(root, section, stops.Count + 1, place, weather, source, ref offset) is { } stop)
                stops.Add(stop);
        }
        if (stops.Count < sections.Count)
            return [];
        for (int i = 1; i < stops.Count; i++)
        {
            if (stops[i].From < stops[i - 1].To)
                sections[i].Report(From, $"the stop begins at {Shown(stops[i].From)}, before the one before it ends", $"accepted: from {Shown(stops[i - 1].To)}");
        }
        CheckWeather(sections, stops);
        return stops;
    }

    private static ReadStop? Read(
        SectionReader root, SectionReader section, int number, GivenPlace place, WeatherSection otherwise, WeatherOnce source, ref TimeSpan? offset)
    {
        string? name = section.Get(Name)?.Trim();
        (double? latitude, double? longitude) = PlaceSection.Position(section, PlaceSection.OfStop.Latitude, PlaceSection.OfStop.Longitude);
        SiteSpecification written = new()
        {
            Name = string.IsNullOrEmpty(name) ? FormattableString.Invariant($"stop {number}") : name,
            Elevation_m = section.Get(PlaceSection.OfStop.Elevation, place.Site.Elevation_m),
            Hookup = section.Get(PlaceSection.OfStop.Hookup) ?? place.Site.Hookup,
            Latitude_deg = section.Has(PlaceSection.OfStop.Latitude) ? latitude : place.Site.Latitude_deg,
            Longitude_deg = section.Has(PlaceSection.OfStop.Longitude) ? longitude : place.Site.Longitude_deg,
            GroundAlbedo_frac = section.Get(PlaceSection.OfStop.GroundAlbedo, place.Site.GroundAlbedo_frac),
        };
        GivenPlace given = new(written, place.HasElevation || section.Has(PlaceSection.OfStop.Elevation));
        WeatherSection weather = Weather(section, given, otherwise, source, panels: root.Has(SolarSection.Declared));
        SiteSpecification site = given.Completed(weather.Station);
        // Without a [weather] for all, clocks are those of the first stop's own.
        offset ??= OffsetOf(weather);
        DateTimeOffset? from = Required(section, From, offset ?? TimeSpan.Zero), to = Required(section, To, offset ?? TimeSpan.Zero);
        section.Finish();
        if (from is not null && to <= from)
            section.Report(To, $"the stop ends at {Shown(to.Value)}, not after it begins", $"accepted: after {Shown(from.Value)}");
        if (from is null || to is null || to <= from || weather.Rows.Count < 2)
            return null;
        TripStop stop = new()
        {
            From = from.Value,
            To = to.Value,
            Site = site,
            Weather = new WeatherSeries(weather.Rows, weather.Defaults, site),
        };
        return new ReadStop(stop, section.Place, weather);
    }

    /// <summary>Whether there are stops and each has a weather of its own.</summary>
    public static bool HaveTheirOwnWeather(SectionReader root)
    {
        // What is no table is reported where the stops are read.
        IReadOnlyList<SectionReader> sections = root.AreTables(Declared) ? root.Sections(Declared) : [];
        return sections.Count > 0 && sections.All(s => s.Has(WeatherSection.Declared));
    }

    private static TimeSpan? OffsetOf(WeatherSection weather)
        => weather.Clock ?? (weather.Rows.Count > 0 ? weather.Rows[0].Time.Offset : null);

    // What is assumed of a stop's own weather is said with the stop's name.
    private static WeatherSection Weather(SectionReader section, GivenPlace given, WeatherSection otherwise, WeatherOnce source, bool panels)
    {
        SectionReader own = section.Section(WeatherSection.Declared);
        List<string> assumptions = section.Reading.Assumptions;
        if (!own.Present)
        {
            assumptions.AddRange(PlaceSection.FromWeather(given.Site.Name, given, otherwise.Station));
            return otherwise;
        }

        if (source.Instead is not null)
            section.Report(WeatherSection.Declared, "the stop has a weather of its own, in whose place no other file can be read", "accepted: --weather with a scenario of one weather");
        int before = assumptions.Count;
        WeatherSection weather = WeatherSection.Read(
            own, source, given, panels, clock: section.Value(From) is TomlDateOrTime { HasOffset: true } from ? from.Value.Offset : null, outer: otherwise.Offset);
        for (int i = before; i < assumptions.Count; i++)
            assumptions[i] = $"{given.Site.Name}: {assumptions[i]}";
        assumptions.InsertRange(before, PlaceSection.FromWeather(given.Site.Name, given, weather.Station));
        return weather;
    }

    private static DateTimeOffset? Required(SectionReader section, DateTimeKey key, TimeSpan offset)
    {
        if (!section.Has(key))
            section.Lacks(key, "accepted: a date and time, without quotes, such as 2027-01-14T16:00:00");
        return section.Get(key, offset);
    }

    // The road to a stop is in that stop's weather.
    private static void CheckWeather(IReadOnlyList<SectionReader> sections, List<ReadStop> stops)
    {
        for (int i = 0; i < stops.Count; i++)
        {
            TripStop stop = stops[i].Stop;
            DateTimeOffset from = i > 0 && stops[i - 1].To < stop.From ? stops[i - 1].To : stop.From;
            if (from < stop.Weather.First || from >= stop.Weather.Last)
            {
                sections[i].Report(From, $"the stop's weather does not hold {Shown(from)}{(from < stop.From ? ", when the coach sets out for it" : "")}",
                    $"accepted: from {Shown(stop.Weather.First)} to before {Shown(stop.Weather.Last)}");
            }
            else if (stop.To > stop.Weather.Last)
            {
                sections[i].Report(To, $"the stop ends at {Shown(stop.To)}, after its weather", $"accepted: up to {Shown(stop.Weather.Last)}");
            }
        }
    }

    public static string Shown(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture);
}
