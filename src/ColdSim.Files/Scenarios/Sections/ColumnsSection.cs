using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Files.Weather;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[weather.columns]</c>: which heading of the weather file is what, where its layout is not a known one.</summary>
internal static class ColumnsSection
{
    private static readonly ItemsKey Time = new(
        "time", ItemForms.Text, KeyDefault.Needed, "the heading over the times, or over the dates where `clock` is given; or those over the parts of a date, year first, which are joined by blanks")
    {
        IsSingle = true,
        IsList = true,
        Form = "text or list of texts",
        Such = "\"Date\"",
    };

    private static readonly TextKey Clock = new("clock", KeyDefault.None, "the heading over the times of day, where they are apart") { Such = "Time" };

    private static readonly TextKey TimeFormat = new(
        "time_format", KeyDefault.Of("ISO 8601, or whole numbers from the year down where `time` names three columns or more"),
        "how a time is written: `\"dd.MM.yyyy HH:mm\"` with `yyyy`, `MM`, `dd`, `HH`, `mm`, `ss`, `zzz`; or `\"unix\"`, seconds since 1970")
    {
        Such = "dd.MM.yyyy HH:mm",
    };

    private static readonly TextKey Zone = new(
        "time_zone", KeyDefault.None, "the zone by whose clock times without an offset are written, with its summer time, by its name in the time zone database")
    {
        Such = "America/Denver",
    };

    private static readonly WholeKey HeaderLine = new(
        "header_line", 0, ColumnMap.HeadingLines, KeyDefault.Of("the line that has the headings named"),
        "the line of the headings; what is above is passed over. 0 for a table without: its columns are then called `\"1\"`, `\"2\"` and so on");

    private static readonly TextKey Separator = new(
        "separator", KeyDefault.Of("the one seen most in the headings"), "what parts the fields; where it is no comma, a comma is read as a decimal point")
    {
        Accepts = "any sign; `\"tab\"`; `\"blank\"` for any number of blanks",
        Such = ";",
    };

    private static readonly ItemsKey Missing = new("missing", ItemForms.Text, KeyDefault.Of("an empty field"), "what means \"not known\"")
    {
        IsSingle = true,
        IsList = true,
        Form = "text or list of texts",
        Such = "[\"-999\", \"n/a\"]",
    };

    private static readonly ChoiceKey<IrradianceAveraging> SunIs = new(
        "sun_is", IrradianceAveraging.Instantaneous, "what an irradiance is the mean of",
        ("instant", IrradianceAveraging.Instantaneous), ("hour before", IrradianceAveraging.HourEnding), ("hour after", IrradianceAveraging.HourBeginning));

    private static readonly IReadOnlyList<ColumnKeys> Columns = [.. WeatherColumn.All.Select(c => new ColumnKeys(c))];

    public static readonly ScenarioSection Declared = new(
        "columns", TableForm.One, "which heading of the weather file is what, where its layout is not a known one",
        [Time, Clock, TimeFormat, Zone, HeaderLine, Separator, Missing, SunIs, .. Columns.SelectMany(c => new ScenarioKey[] { c.Heading, c.Unit })])
    {
        FixedForOptions = true,
    };

    public static ColumnMap? Read(SectionReader section)
    {
        Dictionary<string, MappedColumn> columns = [];
        IReadOnlyList<string> time = Texts(section, Time);
        string? clock = section.Get(Clock);
        string? format = section.Get(TimeFormat);
        TimeZoneInfo? zone = ReadZone(section);
        int? line = section.Get(HeaderLine);
        char? separator = ReadSeparator(section);
        IReadOnlyList<string> missing = Texts(section, Missing);
        IrradianceAveraging sun = section.GetOrDefault(SunIs);
        foreach (ColumnKeys keys in Columns)
        {
            string? heading = section.Get(keys.Heading);
            string? unit = section.Get(keys.Unit);
            if (heading is not null)
                columns[keys.Column.Name] = new MappedColumn(heading, unit);
            else if (unit is not null)
                section.Report(keys.Unit, $"'{keys.Unit.Name}' without '{keys.Heading.Name}'");
            if (unit is not null && keys.Column.FindUnit(unit) is null)
                section.Report(keys.Unit, $"'{keys.Unit.Name}' is \"{Quote.Of(unit)}\"", "accepted: " + string.Join(", ", SpellingTable.Accepted(keys.Column.Dimension)));
        }
        section.Finish();
        if (!section.Present)
            return null;
        if (!section.Has(Time))
            section.Lacks(Time, "accepted: the heading over the times");
        if (!section.Has(Columns[0].Heading))
            section.Lacks(Columns[0].Heading, "accepted: the heading over the air temperature");
        if (format is "" || (format is not null && format != "unix" && !format.Contains('y', StringComparison.Ordinal)))
            section.Report(TimeFormat, $"'time_format' is \"{Quote.Of(format)}\"", "accepted: \"unix\", or letters for each part, such as \"dd.MM.yyyy HH:mm\"");
        return time.Count == 0 || columns.Count == 0 ? null : new ColumnMap
        {
            Time = time,
            Clock = clock,
            TimeFormat = format,
            Zone = zone,
            HeaderLine = line,
            Separator = separator,
            Missing = missing,
            Sun = sun,
            Columns = columns,
        };
    }

    private static IReadOnlyList<string> Texts(SectionReader section, ItemsKey key)
    {
        switch (section.Value(key))
        {
            case null: return [];
            case TomlText text: return [text.Value.Trim()];
            case TomlList list when (list.Items.Count > 0 || key == Missing) && list.Items.All(i => i is TomlText): return [.. list.Items.Cast<TomlText>().Select(t => t.Value.Trim())];
            case { } other:
                section.Reading.Report(other.Place, $"'{key.Name}' is {other.Kind}", $"accepted: a text in quotes, or several in brackets, such as {(key == Time ? "[\"Year\", \"Month\", \"Day\", \"Hour\"]" : "[\"-999\", \"n/a\"]")}");
                return [];
        }
    }

    private static TimeZoneInfo? ReadZone(SectionReader section)
    {
        if (section.Get(Zone) is not { } name)
            return null;
        TimeZoneInfo? zone = TimeZoneName.Find(name.Trim());
        if (zone is null)
            section.Report(Zone, $"'time_zone' is \"{Quote.Of(name)}\", which this machine does not know", TimeZoneName.Accepted);
        return zone;
    }

    private static char? ReadSeparator(SectionReader section)
    {
        switch (section.Get(Separator))
        {
            case null: return null;
            case "tab" or "\t": return '\t';
            case "blank" or "blanks" or " ": return ColumnMap.Blanks;
            case [var sign] when !char.IsLetterOrDigit(sign) && !char.IsControl(sign) && !char.IsSurrogate(sign) && sign is not ('"' or '.' or '-' or '+'): return sign;
            case { } other:
                section.Report(Separator, $"'separator' is \"{Quote.Of(other)}\"", "accepted: one sign such as \",\" or \";\", \"tab\", or \"blank\" for any number of blanks");
                return null;
        }
    }

    /// <summary>The two keys of a column: its heading and its unit.</summary>
    private sealed class ColumnKeys(WeatherColumn column)
    {
        public WeatherColumn Column => column;

        public TextKey Heading { get; } = new(
            Key(column), column == WeatherColumn.Air ? KeyDefault.Needed : KeyDefault.None, "the heading over " + Words(column))
        {
            Such = column.Name,
        };

        public TextKey Unit { get; } = new(Key(column) + "_unit", KeyDefault.Of("the heading's, in brackets"), "its unit")
        {
            Such = SpellingTable.Accepted(column.Dimension).First(),
            GoesWith = [Key(column)],
        };

        private static string Key(WeatherColumn column) => column.Name.Replace(' ', '_');

        private static string Words(WeatherColumn column) => column.Name switch
        {
            "air" => "the air temperature",
            "humidity" => "the relative humidity",
            "sun" => "the sunlight on level ground",
            "cloud" => "the cloud cover",
            "pressure" => "the pressure at the station",
            _ => "the " + column.Name,
        };
    }
}
