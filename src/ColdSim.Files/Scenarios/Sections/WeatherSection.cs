using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Files.Weather;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[weather]</c>: the weather file, how it is carried to the place, and what is used for what it does not have.</summary>
/// <param name="Rows">Empty where the file cannot be read.</param>
/// <param name="Defaults">Values for missing columns and values.</param>
/// <param name="Offset">Offset of times written without one.</param>
internal sealed record WeatherSection(IReadOnlyList<WeatherRow> Rows, WeatherDefaults Defaults, TimeSpan? Offset)
{
    // A station this much higher or lower than the place is worth a warning.
    private const double WorthSaying_m = 100;

    private const string NotInFile = "{key}: not in the weather file; assumed {value}";

    private static readonly WeatherDefaults Usual = new();
    private static readonly PlaceShift NoShift = new();

    private static readonly TextKey File = new(
        "file", KeyDefault.Needed,
        "the weather file, relative to the scenario's folder: [our CSV](weather-csv.md) or [one that can be had elsewhere](weather-formats.md), packed with gzip or not")
    {
        Such = "weather.csv",
        Comment = "beside this file; its columns are described in docs/weather-csv.md",
        FixedForOptions = true,
    };

    private static readonly ChoiceKey<WeatherFormat> Format = new(
        "format", KeyDefault.Of("recognised"), "the file's layout, where looking at it is not enough", WeatherFormatNames.Chosen)
    { FixedForOptions = true };

    private static readonly TextKey OffsetKey = new(
        "offset", KeyDefault.None,
        "offset from UTC, such as `\"-07:00\"`, of times that are written without one; the clock that times in UTC are shown by")
    {
        Accepts = "-14:00 to +14:00",
        Such = "-07:00",
        FixedForOptions = true,
    };

    private static readonly DateTimeKey From = new(
        "from", DateTimeForm.DateAtLeast, KeyDefault.Of("the file's first row"),
        "rows before it are passed over while reading; without offset by the file's own clock")
    { FixedForOptions = true };

    private static readonly DateTimeKey To = new(
        "to", DateTimeForm.DateAtLeast, KeyDefault.Of("the file's last row"), "rows after it likewise; a date alone means its end")
    { FixedForOptions = true };

    private static readonly QuantityKey Bridge = new(
        "bridge", Dimension.Duration, "3 h", "31 d", KeyDefault.Of(WeatherGaps.Longest.TotalSeconds, "h"),
        "the longest gap between rows that a straight line may bridge; every gap is noted")
    { FixedForOptions = true };

    private static readonly WholeKey Year = new(
        "year", 1900, 2200, KeyDefault.Of("one that fits"), "the year that a typical year (EPW, TMY3) is put on")
    { FixedForOptions = true };

    private static readonly QuantityKey StationElevation = new(
        "station_elevation", Dimension.Length, "-430 m", "6,000 m", KeyDefault.None,
        "where the file's weather was measured: shifts temperature and pressure from there to the place's `elevation`");

    private static readonly NumberKey Lapse = new(
        "lapse", -10, 15, KeyDefault.Of(1000 * NoShift.Lapse_K_m),
        "how much colder it is a kilometre up; alone, shifts from the elevation that the file has")
    { Unit = "K per km" };

    private static readonly QuantityKey WindHeight = new(
        "wind_height", Dimension.Length, "0.5 m", "200 m", KeyDefault.Of("10 m"),
        "height above ground at which the wind was measured; brought to 10 m in the open, no further");

    private static readonly ChoiceKey<Terrain> WindTerrain = new(
        "wind_terrain", NoShift.WindTerrain, "the country round the anemometer",
        ("water", Terrain.OpenWater), ("open", Terrain.Open), ("wooded", Terrain.Wooded), ("city", Terrain.City));

    private static readonly QuantityKey Hollow = new(
        "hollow", Dimension.TemperatureDifference, "0 K", "20 K", KeyDefault.Of(NoShift.HollowDrop_K, "K"),
        "how much colder the place is from sunset to sunrise of calm nights; needs `latitude` and `longitude`");

    private static readonly QuantityKey HollowCalm = new(
        "hollow_calm", Dimension.Speed, "0 m/s", "10 m/s", KeyDefault.Of(NoShift.HollowCalm_m_s, "m/s"), "a night's mean wind up to which it is calm");

    private static readonly QuantityKey Wind = new(
        "wind", Dimension.Speed, "0 m/s", "60 m/s", KeyDefault.Of(Usual.Wind_m_s, "m/s"), "used where the file has no wind")
    { Assumed = NotInFile };

    private static readonly QuantityKey Humidity = new(
        "humidity", Dimension.Ratio, "1 %", "100 %", KeyDefault.Of(Usual.RelativeHumidity_frac, "%"),
        "used where the file has no humidity or dew point")
    { Assumed = NotInFile };

    private static readonly QuantityKey Cloud = new(
        "cloud", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.Cloud_frac, "%"), "used where the file has no cloud")
    { Assumed = NotInFile };

    private static readonly QuantityKey Sun = new(
        "sun", Dimension.Irradiance, "0 W/m²", "1,400 W/m²", KeyDefault.Of(Usual.Sun_W_m2, "W/m²"), "used where the file has no sun")
    { Assumed = NotInFile };

    public static readonly ScenarioSection Declared = new(
        "weather", TableForm.One, "the weather file, how it is carried to the place, and what is used for what it does not have",
        [
            File, Format, OffsetKey, From, To, Bridge, Year, StationElevation, Lapse, WindHeight, WindTerrain, Hollow, HollowCalm, Wind, Humidity, Cloud, Sun,
        ],
        ColumnsSection.Declared);

    /// <summary>Reads the table.</summary>
    /// <param name="section">The table.</param>
    /// <param name="source">Opens the file.</param>
    /// <param name="site">The place of the coach.</param>
    /// <param name="panels">Whether there are solar panels, which take their sun from the sky where the file has none.</param>
    /// <param name="needed">Whether it must be there.</param>
    public static WeatherSection Read(SectionReader section, WeatherOnce source, SiteSpecification site, bool panels, bool needed = true)
    {
        TimeSpan? offset = ReadOffset(section);
        WeatherDefaults defaults = new()
        {
            Wind_m_s = section.GetOrDefault(Wind),
            RelativeHumidity_frac = section.GetOrDefault(Humidity),
            Cloud_frac = section.GetOrDefault(Cloud),
            Sun_W_m2 = section.GetOrDefault(Sun),
        };
        string? file = section.Get(File);
        WeatherRequest request = ReadRequest(section, offset) with { Near = site is { Latitude_deg: { } latitude, Longitude_deg: { } longitude } ? (latitude, longitude) : null };
        PlaceShift shift = ReadShift(section);
        section.Finish();
        if (!section.Present)
        {
            if (needed)
                section.Reading.Missing(section.Place, "the scenario has no [weather]");
        }
        else if (!section.Has(File))
            section.Lacks(File, "accepted: the name of a weather CSV");
        ColumnCounts? counts = null;
        IReadOnlyList<WeatherRow> rows = file is null ? [] : ReadFile(section, source, file, request, shift, defaults, site, out counts);
        NameDefaults(section.Reading, rows, counts, defaults, panels && site.Latitude_deg is not null);
        return new WeatherSection(rows, defaults, offset);
    }

    private static WeatherRequest ReadRequest(SectionReader section, TimeSpan? offset)
    {
        WeatherRequest request = new()
        {
            Format = section.Get(Format),
            Offset = offset,
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
        double? lapse_K_km = section.Get(Lapse);
        return new PlaceShift
        {
            StationElevation_m = section.Get(StationElevation),
            Lapse_K_m = lapse_K_km / 1000 ?? NoShift.Lapse_K_m,
            WindHeight_m = section.Get(WindHeight),
            WindTerrain = section.GetOrDefault(WindTerrain),
            HollowDrop_K = section.GetOrDefault(Hollow),
            HollowCalm_m_s = section.GetOrDefault(HollowCalm),
        };
    }

    private static IReadOnlyList<WeatherRow> ReadFile(
        SectionReader section, WeatherOnce source, string file, WeatherRequest request, PlaceShift shift, WeatherDefaults defaults, SiteSpecification site, out ColumnCounts? counts)
    {
        (WeatherResult? weather, string shown) = source.Read(file, request);
        counts = weather?.Counts;
        if (weather is null)
        {
            section.Reading.Report(section.ValuePlace(File), $"the weather file '{Quote.Of(file)}' cannot be opened: {shown}");
            return [];
        }
        section.Reading.Problems.AddRange(weather.Problems);
        section.Reading.Warnings.AddRange(weather.Warnings);
        section.Reading.Warnings.AddRange(weather.Notes);
        section.Reading.Assumptions.AddRange(weather.Notes);
        if (counts is not null)
            section.Reading.Assume($"weather: {counts.Rows} rows, all checked; what is shown here is worked out from the coldest of every {weather.RowsForEach}");

        // The coldest rows alone say nothing of the unit.
        WarnOfUnusual(section, shown, counts is null ? weather : weather with { AirUnit = null }, site);
        return weather.Rows.Count == 0 ? [] : AtPlace(section, shift, weather, defaults, site);
    }

    private static void WarnOfUnusual(SectionReader section, string file, WeatherResult weather, SiteSpecification site)
    {
        if (weather.Rows.Count == 0)
            return;
        WeatherAtPlace at = new(weather, site);
        foreach (UnusualValue<WeatherAtPlace> unusual in UnusualWeather.All)
        {
            if (unusual.Find(at) is { } found)
                section.Reading.WarnUnusual(section.ValuePlace(File), $"{file}: {found}", unusual.Usual);
        }
    }

    // The rows as they are at the place; what was done is named among the assumptions.
    private static IReadOnlyList<WeatherRow> AtPlace(SectionReader section, PlaceShift shift, WeatherResult weather, WeatherDefaults defaults, SiteSpecification site)
    {
        bool lapse = section.Has(Lapse);
        if (shift.StationElevation_m is null && weather.Station.Elevation_m is { } own_m)
        {
            if (lapse)
                shift = shift with { StationElevation_m = own_m };
            else if (Math.Abs(own_m - site.Elevation_m) > WorthSaying_m)
                section.Reading.Warn($"weather: the station is at {own_m:0} m and the place at {site.Elevation_m:0} m; 'station_elevation' or 'lapse' would shift the temperature");
        }
        else if (lapse && shift.StationElevation_m is null)
        {
            section.Report(Lapse, "'lapse' without the station's elevation, which the file does not say", "accepted: 'station_elevation' beside it");
        }
        if (shift.HollowDrop_K > 0 && site.Latitude_deg is null)
        {
            section.Report(Hollow, "'hollow' needs to know when the sun sets", "accepted: latitude and longitude under [place]");
            return weather.Rows;
        }
        IReadOnlyList<WeatherRow> rows = shift.Apply(weather.Rows, site, defaults.Wind_m_s, out IReadOnlyList<string> notes);
        section.Reading.Assumptions.AddRange(notes);
        return rows;
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

    private static void NameDefaults(Reading reading, IReadOnlyList<WeatherRow> rows, ColumnCounts? counts, WeatherDefaults defaults, bool panels)
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
                reading.Assumptions.Add(NotInFile.Replace("{key}", what, StringComparison.Ordinal).Replace("{value}", assumed, StringComparison.Ordinal));
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
