using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather.Formats;

/// <summary>
/// Global-hourly (Integrated Surface Database) CSV: times in UTC, and cells that hold several parts with their codes of quality, such as <c>-0067,1</c>.
/// </summary>
internal static class GlobalHourlyCsv
{
    private static readonly string[] Layers = ["GA1", "GA2", "GA3", "GA4", "GA5", "GA6"];

    /// <summary>The fields of the columns used; -1 for one that is not there.</summary>
    private sealed record Fields(int Date, int Type, int Air, int DewPoint, int Wind, int Pressure, int Cover, int[] Layers);

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (!records.Next())
            return;
        string[] headings = records.All();
        int Field(string name) => RecordReader.IndexOf(headings, name);
        Fields at = new(Field("DATE"), Field("REPORT_TYPE"), Field("TMP"), Field("DEW"), Field("WND"), Field("MA1"), Field("GF1"), [.. Layers.Select(Field).Where(f => f >= 0)]);
        if (at.Date < 0 || at.Air < 0)
        {
            faults.Report(1, 1, at.Date < 0 ? "no column 'DATE'" : "no column 'TMP'", "accepted: the publisher's headings");
            return;
        }

        rows.DeclareColumn(WeatherColumn.Air);
        foreach ((WeatherColumn column, int field) in ((WeatherColumn, int)[])[(WeatherColumn.DewPoint, at.DewPoint), (WeatherColumn.Wind, at.Wind), (WeatherColumn.Pressure, at.Pressure)])
        {
            if (field >= 0)
                rows.DeclareColumn(column);
        }

        if (at.Cover >= 0 || at.Layers.Length > 0)
            rows.DeclareColumn(WeatherColumn.Cloud);
        TimeSpan shown = request.Offset ?? TimeSpan.Zero;
        rows.Clock = request.Offset is null ? "UTC" : $"UTC, shown as UTC{InstantText.OfOffset(shown)}";
        rows.EmptyMessage = "no rows with a temperature";
        HourlySelector pick = new(rows, faults);
        PackedCells cells = new(records, rows, faults);
        for (bool first = true; !rows.IsPastWindow && records.Next(); first = false)
        {
            if (first)
                rows.Station = Station(records, headings) with { Offset = request.Offset };
            if (ReportType.Rank(records.Text(at.Type)) is not { } rank)
            {
                rows.LeftOut++;
                continue;
            }

            if (records.Count < Math.Min(headings.Length, 12))
                faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
            else if (InstantText.TryRead(records.Text(at.Date), TimeSpan.Zero, out DateTimeOffset time) != InstantText.Outcome.Read)
            {
                if (!records.ReportRepeatedHeadings(headings))
                    faults.Report(records.Line, records.ColumnOf(at.Date), $"DATE: '{Quote.Of(records.Text(at.Date))}' is not a date and time", "accepted: such as 2023-01-31T23:54:00");
            }
            else
            {
                faults.At = time;
                if (Row(cells, at, time.ToOffset(shown)) is { } row)
                    pick.Add(row, rank, records.Line);
                continue;
            }

            rows.HasSkippedRows = true;
        }

        pick.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        cells.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static WeatherRow? Row(PackedCells cells, Fields at, DateTimeOffset time)
    {
        double? air = cells.Value(WeatherColumn.Air, "°C", at.Air, part: 0, quality: 1, scale: 0.1, missing: 9999);
        double? dewPoint = cells.Value(WeatherColumn.DewPoint, "°C", at.DewPoint, part: 0, quality: 1, scale: 0.1, missing: 9999);
        double? wind = cells.Value(WeatherColumn.Wind, "m/s", at.Wind, part: 3, quality: 4, scale: 0.1, missing: 9999);
        double? pressure = cells.Value(WeatherColumn.Pressure, "hPa", at.Pressure, part: 2, quality: 3, scale: 0.1, missing: 99_999);
        if (air is not { } known)
        {
            cells.WithoutAir++;
            cells.Rows.LeftOut++;
            return null;
        }

        double? cloud = cells.Cover_frac(at.Cover);
        foreach (int layer in cloud is null ? at.Layers : [])
        {
            if (cells.Cover_frac(layer) is { } part && !(part <= cloud))
                cloud = part;
        }

        return new WeatherRow(time, known, wind, dewPoint, null, cloud, pressure);
    }

    private static WeatherStation Station(RecordReader records, string[] headings) => new()
    {
        Id = records.Text(RecordReader.IndexOf(headings, "STATION")) is { Length: > 0 } id ? id : null,
        Name = records.Text(RecordReader.IndexOf(headings, "NAME")) is { Length: > 0 } name ? name : null,
        Latitude_deg = records.NumberWithin(RecordReader.IndexOf(headings, "LATITUDE"), 90),
        Longitude_deg = records.NumberWithin(RecordReader.IndexOf(headings, "LONGITUDE"), 180),
        Elevation_m = records.NumberWithin(RecordReader.IndexOf(headings, "ELEVATION"), 9000),
    };
}
