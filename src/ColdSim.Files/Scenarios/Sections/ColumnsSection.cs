using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Files.Weather;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[weather.columns]</c>: which heading of the weather file is what, where its layout is not a known one.</summary>
internal static class ColumnsSection
{
    private static readonly TextKey Time = new("time", KeyDefault.Needed, "the heading over the times, or over the dates where `clock` is given") { Such = "Date" };

    private static readonly TextKey Clock = new("clock", KeyDefault.None, "the heading over the times of day, where they are apart") { Such = "Time" };

    private static readonly TextKey TimeFormat = new(
        "time_format", KeyDefault.Of("ISO 8601"),
        "how a time is written: `\"dd.MM.yyyy HH:mm\"` with `yyyy`, `MM`, `dd`, `HH`, `mm`, `ss`, `zzz`; or `\"unix\"`, seconds since 1970")
    {
        Such = "dd.MM.yyyy HH:mm",
    };

    private static readonly WholeKey HeaderLine = new(
        "header_line", 1, 40, KeyDefault.Of(1), "the line of the headings; what is above is passed over");

    private static readonly ChoiceKey<char> Separator = new(
        "separator", KeyDefault.Of("the one seen most in the headings"), "what parts the fields; where it is no comma, a comma is read as a decimal point",
        (",", ','), (";", ';'), ("tab", '\t'), ("|", '|'));

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
        [Time, Clock, TimeFormat, HeaderLine, Separator, Missing, SunIs, .. Columns.SelectMany(c => new ScenarioKey[] { c.Heading, c.Unit })])
    {
        FixedForOptions = true,
    };

    public static ColumnMap? Read(SectionReader section)
    {
        Dictionary<string, MappedColumn> columns = [];
        string? time = section.Get(Time);
        string? clock = section.Get(Clock);
        string? format = section.Get(TimeFormat);
        int line = section.GetOrDefault(HeaderLine);
        char? separator = section.Get(Separator);
        IReadOnlyList<string> missing = ReadMissing(section);
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
        return time is null || columns.Count == 0 ? null : new ColumnMap
        {
            Time = time,
            Clock = clock,
            TimeFormat = format,
            HeaderLine = line,
            Separator = separator,
            Missing = missing,
            Sun = sun,
            Columns = columns,
        };
    }

    private static IReadOnlyList<string> ReadMissing(SectionReader section)
    {
        switch (section.Value(Missing))
        {
            case null: return [];
            case TomlText text: return [text.Value.Trim()];
            case TomlList list when list.Items.All(i => i is TomlText): return [.. list.Items.Cast<TomlText>().Select(t => t.Value.Trim())];
            case { } other:
                section.Reading.Report(other.Place, $"'missing' is {other.Kind}", "accepted: a text in quotes, or several in brackets, such as [\"-999\", \"n/a\"]");
                return [];
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
