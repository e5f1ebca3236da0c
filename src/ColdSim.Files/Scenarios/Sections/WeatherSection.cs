using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Files.Weather;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[weather]</c>: the weather file, and what stands in for what it does not have.</summary>
/// <param name="Rows">Empty where the file cannot be read.</param>
/// <param name="StandIns">For missing columns and values.</param>
/// <param name="Offset">Offset of times written without one.</param>
internal sealed record WeatherSection(IReadOnlyList<WeatherRow> Rows, WeatherDefaults StandIns, TimeSpan? Offset)
{
    private static readonly QuantityKey Wind = new("wind", Dimension.Speed, "0 m/s", "60 m/s");
    private static readonly QuantityKey Humidity = new("humidity", Dimension.Ratio, "1 %", "100 %");
    private static readonly QuantityKey Cloud = new("cloud", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey Sun = new("sun", Dimension.Irradiance, "0 W/m²", "1,400 W/m²");

    private static readonly QuantityKey Bridge = new("bridge", Dimension.Duration, "3 h", "31 d");

    /// <summary>Reads it.</summary>
    /// <param name="section">The table.</param>
    /// <param name="source">Opens the file.</param>
    /// <param name="site">Where.</param>
    /// <param name="panels">Whether there are solar panels, which take their sun from the sky where the file has none.</param>
    /// <param name="needed">Whether it must be there.</param>
    public static WeatherSection Read(SectionReader section, WeatherOnce source, SiteSpecification site, bool panels, bool needed = true)
    {
        WeatherDefaults defaults = new();
        TimeSpan? offset = ReadOffset(section);
        WeatherDefaults standIns = new()
        {
            Wind_m_s = section.Get(Wind, defaults.Wind_m_s),
            RelativeHumidity_frac = section.Get(Humidity, defaults.RelativeHumidity_frac),
            Cloud_frac = section.Get(Cloud, defaults.Cloud_frac),
            Sun_W_m2 = section.Get(Sun, defaults.Sun_W_m2),
        };
        string? file = section.Text("file");
        WeatherRequest request = ReadRequest(section, offset);
        ShiftKeys shift = ShiftKeys.Read(section);
        section.Finish();
        if (!section.Present)
        {
            if (needed)
                section.Reading.Missing(section.Place, "the scenario has no [weather]");
        }
        else if (!section.Has("file"))
            section.Lacks("file", "accepted: the name of a weather CSV");
        IReadOnlyList<WeatherRow> rows = file is null ? [] : ReadFile(section, source, file, request, shift, standIns, site);
        NameStandIns(section.Reading, rows, standIns, panels && site.Latitude_deg is not null);
        return new WeatherSection(rows, standIns, offset);
    }

    private static WeatherRequest ReadRequest(SectionReader section, TimeSpan? offset)
    {
        WeatherRequest request = ReadKeys(section, offset);
        if (request is { From: { } from, To: { } to } && from.IsNotBefore(to))
            section.Report("from", "'from' lies after 'to', or at it");
        return request;
    }

    private static WeatherRequest ReadKeys(SectionReader section, TimeSpan? offset) => new()
    {
        Format = section.Choice("format", WeatherFormatNames.Choices),
        Offset = offset,
        From = ReadEdge(section, "from"),
        To = ReadEdge(section, "to"),
        Bridge = section.Get(Bridge) is { } bridge_s ? TimeSpan.FromSeconds(bridge_s) : WeatherGaps.Longest,
        Year = section.Whole("year", 1900, 2200),
        Map = ColumnsSection.Read(section.Section("columns")),
    };

    private static IReadOnlyList<WeatherRow> ReadFile(
        SectionReader section, WeatherOnce source, string file, WeatherRequest request, ShiftKeys shift, WeatherDefaults standIns, SiteSpecification site)
    {
        (WeatherResult? weather, string shown) = source.Read(file, request);
        if (weather is null)
        {
            section.Reading.Report(section.Value("file")!.Place, $"the weather file '{file}' cannot be opened: {shown}");
            return [];
        }
        section.Reading.Problems.AddRange(weather.Problems);
        section.Reading.Warnings.AddRange(weather.Warnings);
        section.Reading.Warnings.AddRange(weather.Notes);
        section.Reading.Assumptions.AddRange(weather.Notes);
        return weather.Rows.Count == 0 ? [] : shift.Apply(section, weather, standIns, site);
    }

    private static WindowEdge? ReadEdge(SectionReader section, string key)
    {
        switch (section.Value(key))
        {
            case null: return null;
            case TomlMoment { Date: true, Value.Year: > 1 and < 9999 } moment:
                // A date alone means the whole day.
                DateTime clock = moment.Time || key == "from" ? moment.Value.DateTime : moment.Value.DateTime.AddDays(1);
                return new WindowEdge(clock, moment.Offset ? moment.Value.Offset : null);
            case { } other:
                section.Reading.Report(other.Place, $"'{key}' is {other.Kind}", "accepted: a date, perhaps with a time, without quotes, such as 2025-01-14 or 2025-01-14T16:00:00");
                return null;
        }
    }

    private static TimeSpan? ReadOffset(SectionReader section)
    {
        if (section.Text("offset") is not { } text)
            return null;
        if (InstantText.TryOffset(text, out TimeSpan offset))
            return offset;
        section.Reading.Report(section.Value("offset")!.Place, $"'offset' is \"{text}\"", "accepted: an offset from UTC such as \"-07:00\" or \"Z\"");
        return null;
    }

    private static void NameStandIns(Reading reading, IReadOnlyList<WeatherRow> rows, WeatherDefaults standIns, bool panels)
    {
        if (rows.Count == 0)
            return;
        Name("wind", r => r.Wind_m_s, $"{standIns.Wind_m_s:0.0##} m/s");
        Name("humidity", r => r.DewPoint_K, $"{standIns.RelativeHumidity_frac * 100:0.#} %");
        Name("cloud", r => r.Cloud_frac, $"{standIns.Cloud_frac * 100:0.#} %");
        Name("sun", r => r.Sun_W_m2, panels ? $"{standIns.Sun_W_m2:0.#} W/m² on coach and cylinders" : (FormattableString)$"{standIns.Sun_W_m2:0.#} W/m²");
        if (panels)
            NamePanels(reading, rows, standIns);
        Name("pressure", r => r.Pressure_Pa, $"the standard atmosphere's at the place's elevation");

        void Name(string what, Func<WeatherRow, double?> value, FormattableString standIn)
        {
            int without = rows.Count(r => value(r) is null);
            string taken = standIn.ToString(CultureInfo.InvariantCulture);
            if (without == rows.Count)
                reading.Assume($"{what}: not in the weather file, taken as {taken}");
            else if (without > 0)
                reading.Assume($"{what}: missing in {without} of {rows.Count} rows of weather, there taken as {taken}");
        }
    }

    private static void NamePanels(Reading reading, IReadOnlyList<WeatherRow> rows, WeatherDefaults standIns)
    {
        WeatherRow[] without = [.. rows.Where(r => r.Sun_W_m2 is null)];
        if (without.Length == 0)
            return;
        int clouded = without.Count(r => r.Cloud_frac is not null);
        string standIn = string.Create(CultureInfo.InvariantCulture, $"{standIns.Cloud_frac * 100:0.#} %");
        string cloud = clouded == 0 ? $"{standIn} cloud" : clouded == without.Length ? "the file's cloud" : $"the file's cloud, {standIn} where it has none";
        reading.Assume($"panels: {(without.Length == rows.Count ? "" : "in these rows ")}sun from a clear sky and {cloud}");
    }
}
