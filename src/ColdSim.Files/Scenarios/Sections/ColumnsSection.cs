using ColdSim.Files.Toml;
using ColdSim.Files.Weather;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[weather.columns]</c>: which heading of the weather file is what, where its layout is not a known one.</summary>
internal static class ColumnsSection
{
    public static ColumnMap? Read(SectionReader section)
    {
        Dictionary<string, MappedColumn> columns = [];
        string? time = section.Text("time");
        string? clock = section.Text("clock");
        string? format = section.Text("time_format");
        int line = section.Whole("header_line", 1, 40) ?? 1;
        char? separator = section.Choice("separator", (",", ','), (";", ';'), ("tab", '\t'), ("|", '|'));
        IReadOnlyList<string> missing = Missing(section);
        IrradianceAveraging sun = section.Choice(
            "sun_is", ("instant", IrradianceAveraging.Instantaneous), ("hour before", IrradianceAveraging.HourEnding), ("hour after", IrradianceAveraging.HourBeginning)) ?? IrradianceAveraging.Instantaneous;
        foreach (WeatherColumn column in WeatherColumn.All)
        {
            string key = column.Name.Replace(' ', '_');
            string? heading = section.Text(key);
            string? unit = section.Text(key + "_unit");
            if (heading is not null)
                columns[column.Name] = new MappedColumn(heading, unit);
            else if (unit is not null)
                section.Report(key + "_unit", $"'{key}_unit' without '{key}'");
            if (unit is not null && column.FindUnit(unit) is null)
                section.Report(key + "_unit", $"'{key}_unit' is \"{unit}\"", "accepted: " + string.Join(", ", Quantities.SpellingTable.Accepted(column.Dimension)));
        }
        section.Finish();
        if (!section.Present)
            return null;
        if (!section.Has("time"))
            section.Lacks("time", "accepted: the heading over the times");
        if (!section.Has("air"))
            section.Lacks("air", "accepted: the heading over the air temperature");
        if (format is "" || (format is not null && format != "unix" && !format.Contains('y', StringComparison.Ordinal)))
            section.Report("time_format", $"'time_format' is \"{format}\"", "accepted: \"unix\", or letters for each part, such as \"dd.MM.yyyy HH:mm\"");
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

    private static IReadOnlyList<string> Missing(SectionReader section)
    {
        switch (section.Value("missing"))
        {
            case null: return [];
            case TomlText text: return [text.Value.Trim()];
            case TomlList list when list.Items.All(i => i is TomlText): return [.. list.Items.Cast<TomlText>().Select(t => t.Value.Trim())];
            case { } other:
                section.Reading.Report(other.Place, $"'missing' is {other.Kind}", "accepted: a text in quotes, or several in brackets, such as [\"-999\", \"n/a\"]");
                return [];
        }
    }
}
