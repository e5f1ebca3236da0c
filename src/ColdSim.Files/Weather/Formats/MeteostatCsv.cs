namespace ColdSim.Files.Weather.Formats;

/// <summary>Meteostat's hourly data: with a heading over one time, over year to hour, or, in older bulk files, with no headings at all.</summary>
internal static class MeteostatCsv
{
    private static readonly string[] Bulk = ["date", "hour", "temp", "dwpt", "rhum", "prcp", "snow", "wdir", "wspd", "wpgt", "pres", "tsun", "coco"];
    private static readonly string[] TimeNames = ["time", "date", "datetime"];

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (!records.Next())
            return;
        string[] headings = records.All();
        bool headed = !char.IsAsciiDigit(headings[0].FirstOrDefault());
        if (!headed)
            headings = Bulk;
        SourceTable table = new(records, rows, faults);
        table.Add(WeatherColumn.Air, headings, "temp", "°C");
        table.Add(WeatherColumn.DewPoint, headings, "dwpt", "°C");
        table.Add(WeatherColumn.Humidity, headings, "rhum", "%");
        table.Add(WeatherColumn.Wind, headings, "wspd", "km/h");
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        int time = RecordReader.IndexOf(headings, TimeNames), hour = RecordReader.IndexOf(headings, "hour");
        int[] day = [RecordReader.IndexOf(headings, "year"), RecordReader.IndexOf(headings, "month"), RecordReader.IndexOf(headings, "day")];
        if ((time < 0 && (hour < 0 || day.Any(d => d < 0))) || !table.Has(WeatherColumn.Air))
        {
            faults.Report(records.Line, 1, table.Has(WeatherColumn.Air) ? "no column of time" : "no column 'temp'", "accepted: time, date and hour, or year, month, day and hour; and temp");
            return;
        }
        if (RecordReader.IndexOf(headings, "pres") >= 0)
            faults.Warn($"{faults.File}: column 'pres' is pressure at sea level and is not used");
        rows.Station = rows.Station with { Offset = request.Offset };
        TimeSpan shown = request.Offset ?? TimeSpan.Zero;
        rows.Clock = request.Offset is null ? "UTC" : $"UTC, shown as UTC{InstantText.OfOffset(shown)}";
        for (bool more = !headed || records.Next(); more && !rows.IsPastWindow; more = records.Next())
        {
            if (records.Count != headings.Length)
            {
                faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
                rows.HasSkippedRows = true;
                continue;
            }
            if (Time(records, time, hour, day) is not { } instant)
            {
                if (!records.ReportRepeatedHeadings(headings))
                    faults.Report(records.Line, 1, "the time cannot be read", "accepted: such as 2024-01-31 23:00:00");
                rows.HasSkippedRows = true;
                continue;
            }
            if (table.Row(instant.ToOffset(shown)) is { } row)
                rows.Add(row, records.Line);
        }
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static DateTimeOffset? Time(RecordReader records, int time, int hour, int[] day)
    {
        int clock = hour < 0 ? 0 : records.WholeNumber(hour) ?? -1;
        if (clock is < 0 or > 24)
            return null;
        if (time >= 0)
        {
            string text = records.Text(time);
            if (text.Length == 10)
                text += " 00:00";
            return InstantText.TryRead(text, TimeSpan.Zero, out DateTimeOffset read) == InstantText.Outcome.Read ? read.AddHours(clock) : null;
        }
        int?[] n = [.. day.Select(d => records.WholeNumber(d))];
        return n is [int year and > 1 and < 9999, int month and >= 1 and <= 12, int d2 and >= 1] && d2 <= DateTime.DaysInMonth(year, month)
            ? new DateTimeOffset(year, month, d2, 0, 0, 0, TimeSpan.Zero).AddHours(clock) : null;
    }
}
