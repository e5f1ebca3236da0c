using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather.Formats;

/// <summary>NSRDB's CSV, which is also the CSV of the SAM program: a line of names, a line of their values, then rows dated by year to minute.</summary>
internal static class NsrdbCsv
{
    private static readonly (WeatherColumn Column, string[] Names, string Units, string Unit)[] Columns =
    [
        (WeatherColumn.Air, ["Temperature", "Tdry", "Dry Bulb", "Air Temperature"], "Temperature Units", "°C"),
        (WeatherColumn.DewPoint, ["Dew Point", "Tdew"], "Dew Point Units", "°C"),
        (WeatherColumn.Humidity, ["Relative Humidity", "RH"], "Relative Humidity Units", "%"),
        (WeatherColumn.Wind, ["Wind Speed", "Wspd"], "Wind Speed Units", "m/s"),
        (WeatherColumn.Pressure, ["Pressure", "Pres"], "Pressure Units", "mbar"),
        (WeatherColumn.Sun, ["GHI"], "GHI Units", "W/m²"),
    ];

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (!records.Next())
            return;
        string[] names = records.All();
        if (!records.Next())
        {
            faults.Report(1, 1, "nothing below the first line");
            return;
        }

        string[] values = records.All();
        double? zone = records.NumberWithin(RecordReader.IndexOf(names, "Time Zone", "TZ"), 14);
        double? local = records.NumberWithin(RecordReader.IndexOf(names, "Local Time Zone"), 14);
        WeatherStation station = new()
        {
            Id = Text(records, names, "Location ID"),
            Name = string.Join(", ", ((string?[])[Text(records, names, "City"), Text(records, names, "State"), Text(records, names, "Country")]).OfType<string>()) is { Length: > 0 } place ? place : null,
            Latitude_deg = records.NumberWithin(RecordReader.IndexOf(names, "Latitude", "Lat"), 90),
            Longitude_deg = records.NumberWithin(RecordReader.IndexOf(names, "Longitude", "Lon"), 180),
            Elevation_m = records.NumberWithin(RecordReader.IndexOf(names, "Elevation", "Elev"), 9000),
        };
        if (((zone is { } hours ? InstantText.OffsetFromHours(hours) : null) ?? request.Offset) is not { } offset)
        {
            faults.Report(2, 1, "no 'Time Zone' in the first two lines", "accepted: hours from UTC there, or an offset stated beside the file, such as \"-07:00\"");
            return;
        }

        if (!records.Next())
        {
            faults.Report(records.Line, 1, "no line of headings");
            return;
        }

        string[] headings = records.All();
        SourceTable? table = Table(records, headings, names, values, rows, faults);
        int[] date = [.. ((string[])["Year", "Month", "Day", "Hour", "Minute"]).Select(n => RecordReader.IndexOf(headings, n))];
        if (table is null)
            return;
        if (!table.Has(WeatherColumn.Air) || date.Take(4).Any(d => d < 0))
        {
            faults.Report(records.Line, 1, table.Has(WeatherColumn.Air) ? "no columns Year, Month, Day and Hour" : "no column 'Temperature'", "accepted: the publisher's headings in the third line");
            return;
        }

        // Data may be in UTC where the place's own zone is stated beside it.
        TimeSpan shown = request.Offset ?? (local is { } own && InstantText.OffsetFromHours(own) is { } clock ? clock : offset);
        rows.Station = station with { Offset = shown };
        rows.Clock = offset == shown ? $"UTC{InstantText.OfOffset(offset)}, all year" : $"UTC{InstantText.OfOffset(offset)}, shown as UTC{InstantText.OfOffset(shown)}";
        TypicalYear year = new(request, offset, rows, faults) { Shown = shown };
        while (records.Next())
            Row(records, headings, date, table, year, rows, faults);
        year.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static SourceTable? Table(RecordReader records, string[] headings, string[] names, string[] values, RowCollector rows, WeatherFaults faults)
    {
        SourceTable table = new(records, rows, faults);
        foreach ((WeatherColumn column, string[] known, string units, string usual) in Columns)
        {
            int field = RecordReader.IndexOf(headings, known), stated = RecordReader.IndexOf(names, units);
            if (field < 0)
                continue;
            string spelling = stated >= 0 && stated < values.Length && values[stated] is { Length: > 0 } written ? Spelling(written) : usual;
            if (column.FindUnit(spelling) is not { } unit)
            {
                faults.Report(2, 1, $"{units}: '{Quote.Of(spelling)}' is not a unit of {column.Dimension.Name()}");
                return null;
            }

            table.Add(new SourceColumn(column, field, headings[field], unit));
            rows.DeclareColumn(column);
        }

        return table;
    }

    private static string Spelling(string written) => written switch
    {
        "c" or "C" => "°C",
        "w/m2" or "W/m2" => "W/m²",
        _ => written,
    };

    private static string? Text(RecordReader records, string[] names, string name)
        => records.Text(RecordReader.IndexOf(names, name)) is { Length: > 0 } text and not "-" ? text : null;

    private static void Row(RecordReader records, string[] headings, int[] date, SourceTable table, TypicalYear year, RowCollector rows, WeatherFaults faults)
    {
        if (records.Count != headings.Length)
        {
            faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
            rows.HasSkippedRows = true;
            return;
        }

        int minute = date[4] < 0 ? 0 : records.WholeNumber(date[4]) ?? -1;
        if (records.WholeNumber(date[0]) is not { } y || records.WholeNumber(date[1]) is not { } month || records.WholeNumber(date[2]) is not { } day
            || records.WholeNumber(date[3]) is not (int hour and >= 0 and <= 23) || minute is < 0 or > 59)
        {
            if (!records.ReportRepeatedHeadings(headings))
                faults.Report(records.Line, 1, "year, month, day, hour and minute cannot be read", "accepted: whole numbers, hour 0 to 23, minute 0 to 59");
            rows.HasSkippedRows = true;
            return;
        }

        year.Take(table, y, month, day, (hour * 60) + minute, records.Line);
    }
}
