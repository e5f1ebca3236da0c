using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather.Formats;

/// <summary>A table of no known layout, read by a map of its headings.</summary>
internal static class MappedCsv
{
    public static void Read(WeatherInput input, ColumnMap map, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        (int line, char separator) = Headings(input, map);
        TextReader text = separator == ColumnMap.Blanks ? new BlankSeparatedText(input.Text) : input.Text;
        using RecordReader records = new(text, separator, faults) { Lenient = true };
        bool any;
        while ((any = records.Next()) && records.Line < line)
        {
        }

        records.Lenient = false;
        if (!any)
        {
            faults.Report(Math.Max(1, records.Line), 1, FormattableString.Invariant($"no headings in line {Math.Max(1, line)}"));
            return;
        }

        string[] headings = line == 0 ? [.. Enumerable.Range(1, records.Count).Select(n => FormattableString.Invariant($"{n}"))] : records.All();
        SourceTable table = new(records, rows, faults) { Missing = map.Missing };
        int[] fields = [.. map.Time.Append(map.Clock).OfType<string>().Select(h => Find(h, headings, records, faults))];
        foreach ((string name, MappedColumn mapped) in map.Columns)
            Column(WeatherColumn.All.First(k => k.Name == name), mapped, headings, table, records, faults);
        if (faults.Any)
            return;
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        rows.AirUnit = table.UnitOf(WeatherColumn.Air);
        rows.Averaging = map.Sun;
        rows.Clock = map.Zone is { } zone ? $"as the column map says, by the clock of {zone.Id}"
            : request.Offset is { } offset ? $"as the column map says, UTC{InstantText.OfOffset(offset)} where a time has no offset" : "as the column map says";
        MappedTime time = new(map, request.Offset, fields);
        MappedRows reader = new(records, headings, map.Time[0], time, table, rows, faults);
        for (bool more = line == 0 || records.Next(); more && !rows.IsPastWindow; more = records.Next())
            reader.Take(fields[0]);
        reader.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static (int Line, char Separator) Headings(WeatherInput input, ColumnMap map)
    {
        if (map.HeaderLine is not { } stated)
            return HeadingSearch.Of(input.Head, [.. map.Headings], map.Separator);
        if (map.Separator is { } separator)
            return (stated, separator);
        string line = input.Head.ElementAtOrDefault(Math.Max(stated, 1) - 1) ?? "";
        char seen = RecordReader.SeparatorOf(line);

        // A line with none of the usual separators is parted by blanks.
        return (stated, line.Contains(seen, StringComparison.Ordinal) || !line.Trim().Contains(' ', StringComparison.Ordinal) ? seen : ColumnMap.Blanks);
    }

    private static int Find(string heading, string[] headings, RecordReader records, WeatherFaults faults)
    {
        int field = Array.FindIndex(headings, h => string.Equals(h.TrimStart('\uFEFF'), heading.Trim(), StringComparison.OrdinalIgnoreCase));
        if (field < 0)
            faults.Report(records.Line, 1, $"no column '{Quote.Of(heading)}'", null, NearestName.Of(heading, headings));
        return field;
    }

    private static void Column(WeatherColumn column, MappedColumn mapped, string[] headings, SourceTable table, RecordReader records, WeatherFaults faults)
    {
        int field = Find(mapped.Heading, headings, records, faults);
        if (field < 0)
            return;
        string? unit = mapped.Unit ?? Bracketed(mapped.Heading);
        if (unit is null)
            faults.Report(records.Line, records.ColumnOf(field), $"column '{Quote.Of(mapped.Heading)}' has no unit", "accepted: its unit in brackets, or stated in the column map");
        else if (column.FindUnit(unit) is { } known)
            table.Add(new SourceColumn(column, field, mapped.Heading, known));
        else
            faults.Report(records.Line, records.ColumnOf(field), $"column '{Quote.Of(mapped.Heading)}': '{Quote.Of(unit)}' is not a unit of {column.Dimension.Name()}");
    }

    internal static string? Bracketed(string heading)
    {
        int open = heading.LastIndexOfAny(['[', '(']);
        return open >= 0 && heading[^1] is ']' or ')' ? heading[(open + 1)..^1].Trim() : null;
    }
}
