using System.Globalization;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Planning.Quick;
using static ColdSim.Files.Scenarios.Sections.WeatherKeys;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[weather]</c>: the weather, how it is carried to the place, and what is used for what it does not have.</summary>
/// <param name="Rows">As they are at the place; empty where they cannot be read.</param>
/// <param name="Defaults">Values for missing columns and values.</param>
/// <param name="Site">The place, with what the weather file says of it where the scenario says nothing.</param>
/// <param name="Station">Where the weather is from.</param>
internal sealed record WeatherSection(IReadOnlyList<WeatherRow> Rows, WeatherDefaults Defaults, SiteSpecification Site, WeatherStation Station)
{
    private const string NotWithDays = "accepted: without it; the days have no file";

    public static ScenarioSection Declared => WeatherKeys.Declared;

    /// <summary>How much colder and windier it is than given.</summary>
    public WeatherOffset Offset { get; private init; }

    /// <summary>The offset from UTC of the place's clock; null where neither the scenario nor the weather says it or where the place is.</summary>
    public TimeSpan? Clock { get; private init; }

    /// <summary>Whether the clock is only that of the place's meridian.</summary>
    public bool IsMeridian { get; private init; }

    /// <summary>The file in place of what the scenario names; null for that.</summary>
    public string? Instead { get; private init; }

    /// <summary>Reads the table.</summary>
    /// <param name="section">The table.</param>
    /// <param name="source">Opens the file.</param>
    /// <param name="given">The place of the coach as far as it is given.</param>
    /// <param name="panels">Whether there are solar panels, which take their sun from the sky where the file has none.</param>
    /// <param name="who">Whose place it is, to name what of it comes from the weather; null where others say that.</param>
    /// <param name="clock">The offset of a time that is written with one, for days, which have none; null where there is none.</param>
    /// <param name="needed">Whether it must be there.</param>
    /// <param name="outer">How much colder and windier it is besides, for the weather of a stop; null for nothing.</param>
    /// <param name="wanted">The days of the run, outside which faults of the file matter to nobody; null where they are not known.</param>
    public static WeatherSection Read(
        SectionReader section, WeatherOnce source, GivenPlace given, bool panels, string? who = null, TimeSpan? clock = null, bool needed = true,
        WeatherOffset? outer = null, (DateTimeOffset From, DateTimeOffset To)? wanted = null)
    {
        WeatherDefaults defaults = new()
        {
            Wind_m_s = section.GetOrDefault(Wind),
            RelativeHumidity_frac = section.GetOrDefault(Humidity),
            Cloud_frac = section.GetOrDefault(Cloud),
            Sun_W_m2 = section.GetOrDefault(Sun),
        };
        WeatherOffset offset = WeatherOffset.Read(section).With(outer ?? WeatherOffset.None);
        WeatherRequest request = ReadRequest(section) with
        {
            Wanted = wanted,
            Near = given.Site is { Latitude_deg: { } latitude, Longitude_deg: { } longitude } ? (latitude, longitude) : null,
        };
        string? file = section.Get(WeatherKeys.File);
        PlaceShift shift = ReadShift(section);
        IReadOnlyList<SectionReader> tables = section.Sections(WeatherDaysSection.Declared);
        IReadOnlyList<WeatherDay> days = WeatherDaysSection.Read(tables);
        section.Finish();
        if (source.Instead is { } instead)
        {
            file = instead.File;
            request = new() { Offset = request.Offset ?? instead.Offset ?? clock, Bridge = request.Bridge, Near = request.Near, From = instead.From, To = instead.To };
            shift = shift with { StationElevation_m = null, WindHeight_m = null };
        }
        else if (!section.Present)
        {
            if (needed)
                section.Reading.Missing(section.Place, "the scenario has no [weather]");
        }
        else if (tables.Count > 0)
        {
            RefuseWithDays(section);
        }
        else if (!section.Has(WeatherKeys.File) && (needed || !WeatherOffset.IsAllOf(section)))
        {
            section.Lacks(WeatherKeys.File, "accepted: the name of a weather file, or [[weather.day]] for each day");
        }

        int before = section.Reading.Assumptions.Count;
        string? shown = file;
        WeatherResult? weather = file is not null ? ReadFile(section, source, file, request, out shown)
            : days.Count > 0 ? WeatherDaysSection.Hours(days, section.Reading, request.Offset ?? clock, given.Site.Longitude_deg) : null;
        WeatherStation station = weather?.Station ?? new();
        StationShift carried = new(section, shift, given, station, source.Instead is not null);
        SiteSpecification site = carried.Site;
        if (weather is { Rows.Count: > 0 })
        {
            // The coldest rows alone say nothing of the unit.
            UnusualWeather.Warn(section, new(weather.Counts is null ? weather : weather with { AirUnit = null }, site, carried.IsShifted), shown);
        }

        IReadOnlyList<WeatherRow> rows = weather is null or { Rows.Count: 0 } ? [] : carried.Apply(weather.Rows, defaults.Wind_m_s);
        NameDefaults(section.Reading, rows, weather?.Counts, defaults, panels && site.Latitude_deg is not null, days: file is null);
        if (who is not null)
            section.Reading.Assumptions.InsertRange(before, PlaceSection.FromWeather(who, given, carried.Station));
        TimeSpan? known = request.Offset ?? station.Offset, meridian = site.Longitude_deg is { } east ? MeridianClock.Of(east) : null;
        return new WeatherSection(offset.Apply(rows, section.Reading), offset.Apply(defaults), site, carried.Station)
        {
            Offset = offset,
            Clock = known ?? meridian,
            IsMeridian = known is null && meridian is not null,
            Instead = source.Instead?.File,
        };
    }

    private static WeatherRequest ReadRequest(SectionReader section)
    {
        WeatherRequest request = new()
        {
            Format = section.Get(Format),
            Offset = ReadOffset(section),
            From = ReadEdge(section, From),
            To = ReadEdge(section, To),
            Bridge = section.Get(Bridge) is { } bridge_s ? TimeSpan.FromSeconds(bridge_s) : WeatherGaps.Longest,
            Year = section.Get(Year),
            Map = ColumnsSection.Read(section.Section(ColumnsSection.Declared)),
        };
        if (request is { From: { } from, To: { } to } && from.IsNotBefore(to))
            section.Report(From, "'from' lies after 'to', or at it");
        return request;
    }

    private static PlaceShift ReadShift(SectionReader section)
    {
        PlaceShift none = new();
        return new PlaceShift
        {
            StationElevation_m = section.Get(StationElevation),
            Lapse_K_m = section.Get(Lapse) / 1000 ?? none.Lapse_K_m,
            WindHeight_m = section.Get(WindHeight),
            WindTerrain = section.GetOrDefault(WindTerrain),
            HollowDrop_K = section.GetOrDefault(Hollow),
            HollowCalm_m_s = section.GetOrDefault(HollowCalm),
        };
    }

    private static void RefuseWithDays(SectionReader section)
    {
        foreach (ScenarioKey key in (ScenarioKey[])[WeatherKeys.File, Format, From, To, Bridge, Year])
        {
            if (section.Has(key))
                section.Report(key, $"'{key.Name}' beside [[weather.day]]", NotWithDays);
        }

        if (section.Has(ColumnsSection.Declared))
            section.Report(ColumnsSection.Declared, "[weather.columns] beside [[weather.day]]", NotWithDays);
    }

    private static WeatherResult? ReadFile(SectionReader section, WeatherOnce source, string file, WeatherRequest request, out string shown)
    {
        (WeatherResult? weather, shown) = source.Read(file, request);
        if (weather is null)
        {
            section.Reading.Report(section.ValuePlace(WeatherKeys.File), $"the weather file '{Quote.Of(file)}' cannot be opened: {shown}");
            return null;
        }

        section.Reading.Problems.AddRange(weather.Problems);
        section.Reading.Warnings.AddRange(weather.Warnings);
        section.Reading.Warnings.AddRange(weather.Notes.Where(n => !n.Contains(PvgisCsv.PanelSun, StringComparison.Ordinal)));
        section.Reading.Assumptions.AddRange(weather.Notes);
        if (weather.Counts is { } counts)
            section.Reading.Assume($"weather: {counts.Rows} rows, all checked; what is shown here is worked out from the coldest of every {weather.RowsForEach}");
        return weather;
    }

    private static WindowEdge? ReadEdge(SectionReader section, DateTimeKey key)
    {
        switch (section.Value(key))
        {
            case null: return null;
            case TomlDateOrTime { HasDate: true } written:
                // A date alone means the whole day.
                DateTime clock = written.HasTime || key == From ? written.Value.DateTime : written.Value.DateTime.AddDays(1);
                return new WindowEdge(clock, written.HasOffset ? written.Value.Offset : null);
            case { } other:
                section.Reading.Report(other.Place, $"'{key.Name}' is {other.Kind}", "accepted: a date, perhaps with a time, without quotes, such as 2025-01-14 or 2025-01-14T16:00:00");
                return null;
        }
    }

    private static TimeSpan? ReadOffset(SectionReader section)
    {
        if (section.Get(OffsetKey) is not { } text)
            return null;
        if (InstantText.TryOffset(text, out TimeSpan offset))
            return offset;
        section.Reading.Report(section.ValuePlace(OffsetKey), $"'offset' is \"{Quote.Of(text)}\"", "accepted: an offset from UTC such as \"-07:00\" or \"Z\"");
        return null;
    }

    private static void NameDefaults(Reading reading, IReadOnlyList<WeatherRow> rows, ColumnCounts? counts, WeatherDefaults defaults, bool panels, bool days)
    {
        if (rows.Count == 0)
            return;
        Name(Wind.Name, r => r.Wind_m_s, $"{defaults.Wind_m_s:0.0##} m/s");
        Name(Humidity.Name, r => r.DewPoint_K, $"{defaults.RelativeHumidity_frac * 100:0.#} %");
        Name(Cloud.Name, r => r.Cloud_frac, $"{defaults.Cloud_frac * 100:0.#} %");
        Name(Sun.Name, r => r.Sun_W_m2, panels ? $"{defaults.Sun_W_m2:0.#} W/m² on coach and cylinders" : (FormattableString)$"{defaults.Sun_W_m2:0.#} W/m²");
        if (panels)
            NamePanels(reading, rows, defaults);
        Name("pressure", r => r.Pressure_Pa, $"the standard atmosphere's at the place's elevation");

        void Name(string what, Func<WeatherRow, double?> value, FormattableString shown)
        {
            long all = counts?.Rows ?? rows.Count;
            long without = counts is null ? rows.Count(r => value(r) is null) : all - counts.Of(what);
            string assumed = shown.ToString(CultureInfo.InvariantCulture);
            if (without == all)
                reading.Assumptions.Add((days ? NotInDays : NotInFile).Replace("{key}", what, StringComparison.Ordinal).Replace("{value}", assumed, StringComparison.Ordinal));
            else if (without > 0)
                reading.Assume($"{what}: missing in {without} of {all} rows of weather, there assumed to be {assumed}");
        }
    }

    private static void NamePanels(Reading reading, IReadOnlyList<WeatherRow> rows, WeatherDefaults defaults)
    {
        WeatherRow[] without = [.. rows.Where(r => r.Sun_W_m2 is null)];
        if (without.Length == 0)
            return;
        int clouded = without.Count(r => r.Cloud_frac is not null);
        string shown = string.Create(CultureInfo.InvariantCulture, $"{defaults.Cloud_frac * 100:0.#} %");
        string cloud = clouded == 0 ? $"{shown} cloud" : clouded == without.Length ? "the file's cloud" : $"the file's cloud, {shown} where it has none";
        reading.Assume($"panels: {(without.Length == rows.Count ? "" : "in these rows ")}sun from a clear sky and {cloud}");
    }
}
