namespace ColdSim.Files.Weather.Formats;

/// <summary>
/// Environment Canada's hourly CSV: a row an hour in local standard time, with the station in lines above the headings or, in newer files, in columns of its own.
/// </summary>
internal static class EnvironmentCanadaCsv
{
    private static readonly (WeatherColumn Column, string Begin)[] Columns =
    [
        (WeatherColumn.Air, "Temp ("),
        (WeatherColumn.DewPoint, "Dew Point Temp ("),
        (WeatherColumn.Humidity, "Rel Hum ("),
        (WeatherColumn.Wind, "Wind Spd ("),
        (WeatherColumn.Pressure, "Stn Press ("),
    ];

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        WeatherStation station = new();
        int date = -1;
        records.Lenient = true;
        while (date < 0 && records.Next())
        {
            date = RecordReader.IndexOf(records.All(), "Date/Time", "Date/Time (LST)");
            if (date < 0)
                station = With(station, records.Text(0), records, 1);
        }

        records.Lenient = false;
        if (date < 0)
        {
            faults.Report(records.Line, 1, "no column 'Date/Time'", "accepted: the publisher's hourly CSV with its headings");
            return;
        }

        string[] headings = records.All();
        SourceTable table = new(records, rows, faults);
        foreach ((WeatherColumn column, string begin) in Columns)
        {
            int field = Array.FindIndex(headings, h => h.StartsWith(begin, StringComparison.OrdinalIgnoreCase));
            if (field < 0 || column.FindUnit(headings[field][begin.Length..].TrimEnd(')')) is not { } unit)
                continue;
            table.Add(new SourceColumn(column, field, headings[field], unit));
            rows.DeclareColumn(column);
        }

        if (!table.Has(WeatherColumn.Air))
        {
            faults.Report(records.Line, 1, "no column 'Temp (°C)'", "accepted: the publisher's hourly CSV with its headings");
            return;
        }

        bool more = records.Next();
        for (int i = 0; more && i < headings.Length; i++)
            station = With(station, headings[i], records, i);
        if (request.Offset is not { } offset)
        {
            faults.Report(records.Line, date + 1, "times are in local standard time, and the file does not say its offset from UTC", StandardTime.Accepted(station.Longitude_deg));
            return;
        }

        rows.Station = station with { Offset = offset };
        rows.Clock = $"local standard time, UTC{InstantText.OfOffset(offset)}, all year";
        rows.EmptyMessage = "no hours with a temperature";
        for (; more && !rows.IsPastWindow; more = records.Next())
            Row(records, headings, date, offset, table, rows, faults);
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    // Some months have rows that end after the date: nothing is known of these hours.
    private static void Row(RecordReader records, string[] headings, int date, TimeSpan offset, SourceTable table, RowCollector rows, WeatherFaults faults)
    {
        string text = records.Text(date);
        if (InstantText.TryRead(text, offset, out DateTimeOffset time) != InstantText.Outcome.Read)
        {
            if (!records.ReportRepeatedHeadings(headings))
                faults.Report(records.Line, records.ColumnOf(date), $"{headings[date]}: '{Quote.Of(text)}' is not a date and time", "accepted: such as 2018-01-31 23:00");
            rows.HasSkippedRows = true;
            return;
        }

        if (records.Count > headings.Length)
        {
            faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
            rows.HasSkippedRows = true;
        }
        else if (table.Row(time) is { } row)
            rows.Add(row, records.Line);
    }

    private static WeatherStation With(WeatherStation station, string name, RecordReader records, int field) => name.ToUpperInvariant() switch
    {
        "STATION NAME" when records.Text(field) is { Length: > 0 } text => station with { Name = text },
        "CLIMATE IDENTIFIER" or "CLIMATE ID" when records.Text(field) is { Length: > 0 } text => station with { Id = text },
        "LATITUDE" or "LATITUDE (Y)" => station with { Latitude_deg = records.NumberWithin(field, 90) },
        "LONGITUDE" or "LONGITUDE (X)" => station with { Longitude_deg = records.NumberWithin(field, 180) },
        "ELEVATION" or "ELEVATION (M)" => station with { Elevation_m = records.NumberWithin(field, 9000) },
        _ => station,
    };
}
