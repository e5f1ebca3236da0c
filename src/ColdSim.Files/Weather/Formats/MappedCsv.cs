using System.Globalization;
using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather.Formats;

/// <summary>A table of no known layout, read by a map of its headings.</summary>
internal static class MappedCsv
{
    public static void Read(WeatherInput input, ColumnMap map, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        string headingLine = input.Head.ElementAtOrDefault(map.HeaderLine - 1) ?? "";
        using RecordReader records = new(input.Text, map.Separator ?? RecordReader.SeparatorOf(headingLine), faults) { Lenient = true };
        bool any;
        while ((any = records.Next()) && records.Line < map.HeaderLine)
        {
        }
        records.Lenient = false;
        if (!any)
        {
            faults.Report(Math.Max(1, records.Line), 1, FormattableString.Invariant($"no headings in line {map.HeaderLine}"));
            return;
        }
        string[] headings = records.All();
        SourceTable table = new(records, rows, faults) { Missing = map.Missing };
        int time = Find(map.Time, headings, records, faults), clock = map.Clock is { } c ? Find(c, headings, records, faults) : -1;
        foreach ((string name, MappedColumn mapped) in map.Columns)
            Column(WeatherColumn.All.First(k => k.Name == name), mapped, headings, table, records, faults);
        if (faults.Any)
            return;
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        rows.AirUnit = table.UnitOf(WeatherColumn.Air);
        rows.Averaging = map.Sun;
        rows.Clock = request.Offset is { } offset ? $"as the column map says, UTC{InstantText.OfOffset(offset)} where a time has no offset" : "as the column map says";
        Rows(records, headings, map, time, clock, request, table, rows, faults);
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static void Rows(
        RecordReader records, string[] headings, ColumnMap map, int time, int clock, WeatherRequest request, SourceTable table, RowCollector rows, WeatherFaults faults)
    {
        while (!rows.IsPastWindow && records.Next())
        {
            if (records.Count != headings.Length)
            {
                string hint = records.Count > headings.Length ? "; a decimal comma, perhaps" : "";
                faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings{hint}"));
                rows.HasSkippedRows = true;
                continue;
            }
            string text = clock < 0 ? records.Text(time) : $"{records.Text(time)} {records.Text(clock)}";
            switch (Time(text, map.TimeFormat, request.Offset, out DateTimeOffset instant))
            {
                case InstantText.Outcome.Read:
                    if (instant.Offset != TimeSpan.Zero && rows.Station.Offset is null)
                        rows.Station = rows.Station with { Offset = instant.Offset };
                    if (table.Row(instant) is { } row)
                        rows.Add(row, records.Line);
                    continue;
                case InstantText.Outcome.WithoutOffset:
                    faults.Report(records.Line, records.ColumnOf(time), $"{Quote.Of(map.Time)}: '{Quote.Of(text)}' has no offset from UTC", "accepted: offset = \"-07:00\" under [weather], --offset of 'coldsim weather', or times that have one");
                    break;
                case var _ when records.ReportRepeatedHeadings(headings):
                    break;
                default:
                    faults.Report(records.Line, records.ColumnOf(time), $"{Quote.Of(map.Time)}: '{Quote.Of(text)}' is not a date and time", $"accepted: {(map.TimeFormat is { } written ? Quote.Of(written) : "ISO 8601")}");
                    break;
            }
            rows.HasSkippedRows = true;
        }
    }

    private static InstantText.Outcome Time(string text, string? format, TimeSpan? offset, out DateTimeOffset instant)
    {
        instant = default;
        switch (format)
        {
            case null:
                return InstantText.TryRead(text, offset, out instant);
            case "unix":
                if (!long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long seconds) || Math.Abs(seconds) >= 100_000_000_000)
                    return InstantText.Outcome.Unreadable;
                instant = DateTimeOffset.FromUnixTimeSeconds(seconds).ToOffset(offset ?? TimeSpan.Zero);
                return InstantText.Outcome.Read;
        }
        // The end of a day may be written as its 24th hour.
        bool midnight = format.Contains("HH:mm", StringComparison.Ordinal) && text.Contains("24:00", StringComparison.Ordinal);
        if (midnight)
            text = text.Replace("24:00", "00:00", StringComparison.Ordinal);
        bool own = format.Contains('z', StringComparison.Ordinal) || format.Contains('K', StringComparison.Ordinal);
        if (own)
        {
            if (!DateTimeOffset.TryParseExact(text, format, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces | DateTimeStyles.AssumeUniversal, out instant) || instant.Year is < 2 or > 9998)
                return InstantText.Outcome.Unreadable;
        }
        else
        {
            if (!DateTime.TryParseExact(text, format, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out DateTime local) || local.Year is < 2 or > 9998)
                return InstantText.Outcome.Unreadable;
            if (offset is not { } stated)
                return InstantText.Outcome.WithoutOffset;
            instant = new DateTimeOffset(DateTime.SpecifyKind(local, DateTimeKind.Unspecified), stated);
        }
        instant = midnight ? instant.AddDays(1) : instant;
        return InstantText.Outcome.Read;
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

    private static string? Bracketed(string heading)
    {
        int open = heading.LastIndexOfAny(['[', '(']);
        return open >= 0 && heading[^1] is ']' or ')' ? heading[(open + 1)..^1].Trim() : null;
    }
}
