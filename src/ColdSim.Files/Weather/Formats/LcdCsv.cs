using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>
/// Local Climatological Data: hourly, synoptic, special, daily and monthly records under one header, in local standard time. The first
/// version is in US units, the second in metric ones under the same headings.
/// </summary>
internal static class LcdCsv
{
    private const int MetricIdLength = 11;

    public static void Read(WeatherInput input, char separator, RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (!records.Next())
            return;
        string[] headings = records.All();
        int date = RecordReader.IndexOf(headings, "DATE"), type = RecordReader.IndexOf(headings, "REPORT_TYPE", "REPORTTPYE", "REPORTTYPE"), id = RecordReader.IndexOf(headings, "STATION");
        if (date < 0)
        {
            faults.Report(1, 1, "no column 'DATE'", "accepted: the publisher's headings");
            return;
        }
        if (!records.Next())
        {
            rows.Finish(records.Line);
            return;
        }
        rows.Station = Station(records, headings, id);
        if (Offset(input, separator, request, rows.Station, faults) is not { } offset)
            return;
        rows.Station = rows.Station with { Offset = offset };
        bool metric = IsMetric(rows.Station.Id ?? "");
        SourceTable table = Table(records, headings, metric, rows, faults);
        int sky = RecordReader.IndexOf(headings, "HourlySkyConditions", "HOURLYSKYCONDITIONS");
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        if (sky >= 0)
            rows.DeclareColumn(WeatherColumn.Cloud);
        rows.Clock = $"local standard time, UTC{InstantText.OfOffset(offset)}; {(metric ? "version 2, metric" : "version 1, US units")}";
        rows.EmptyMessage = "no hourly records";
        HourlySelector pick = new(rows, faults);
        bool more = true;
        for (; more && !rows.IsPastWindow; more = records.Next())
        {
            string kind = records.Text(type);
            if (ReportType.Rank(kind) is not { } rank)
            {
                rows.LeftOut++;
                continue;
            }

            if (records.Count < Math.Min(headings.Length, 12))
            {
                faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
                rows.HasSkippedRows = true;
                continue;
            }
            if (!TryTime(records.Text(date), offset, out DateTimeOffset time))
            {
                if (!records.ReportRepeatedHeadings(headings))
                    faults.Report(records.Line, records.ColumnOf(date), $"DATE: '{Quote.Of(records.Text(date))}' is not a date and time", "accepted: such as 2023-01-31T23:54:00");
                rows.HasSkippedRows = true;
                continue;
            }
            if (table.Row(time) is { } row)
                pick.Add(row with { Cloud_frac = CloudLayers.Cover_frac(records.Text(sky)) }, rank, records.Line);
        }
        pick.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static SourceTable Table(RecordReader records, string[] headings, bool metric, RowCollector rows, WeatherFaults faults)
    {
        SourceTable table = new(records, rows, faults) { LettersAreSuspect = true };
        string degree = metric ? "°C" : "°F", speed = metric ? "m/s" : "mph", pressure = metric ? "hPa" : "inHg";
        table.Add(WeatherColumn.Air, headings, "HourlyDryBulbTemperature", degree);
        table.Add(WeatherColumn.Air, headings, "HOURLYDRYBULBTEMPF", "°F");
        table.Add(WeatherColumn.DewPoint, headings, "HourlyDewPointTemperature", degree);
        table.Add(WeatherColumn.DewPoint, headings, "HOURLYDewPointTempF", "°F");
        table.Add(WeatherColumn.Humidity, headings, "HourlyRelativeHumidity", "%");
        table.Add(WeatherColumn.Wind, headings, "HourlyWindSpeed", speed);
        table.Add(WeatherColumn.Pressure, headings, "HourlyStationPressure", pressure);
        return table;
    }

    private static WeatherStation Station(RecordReader records, string[] headings, int id)
    {
        string number = records.Text(id);
        return new WeatherStation
        {
            Id = number.Length == 0 ? null : number,
            Name = records.Text(RecordReader.IndexOf(headings, "NAME", "STATION_NAME")) is { Length: > 0 } name ? name : null,
            Latitude_deg = records.NumberWithin(RecordReader.IndexOf(headings, "LATITUDE"), 90),
            Longitude_deg = records.NumberWithin(RecordReader.IndexOf(headings, "LONGITUDE"), 180),
            Elevation_m = records.NumberWithin(RecordReader.IndexOf(headings, "ELEVATION"), 9000),
        };
    }

    /// <summary>The offset stated, or the file's own, which is then noted; it is never guessed from the longitude, which is wrong for one station in four.</summary>
    private static TimeSpan? Offset(WeatherInput input, char separator, WeatherRequest request, WeatherStation station, WeatherFaults faults)
    {
        if (request.Offset is { } stated)
            return stated;
        if (LcdOffset.Of(input, separator, station.Longitude_deg) is (TimeSpan own, string by))
        {
            faults.Note($"{faults.File}: local standard time, UTC{InstantText.OfOffset(own)} by {by}");
            return own;
        }

        faults.Report(1, 1, "times in local standard time, and neither sunrise and sunset nor a report's UTC to tell its offset", StandardTime.Accepted(station.Longitude_deg));
        return null;
    }

    // The second version names stations by country, network and eight more signs.
    private static bool IsMetric(string id) => id.Length == MetricIdLength && char.IsAsciiLetter(id[0]) && char.IsAsciiLetter(id[1]) && id.All(char.IsAsciiLetterOrDigit);

    private static bool TryTime(string text, TimeSpan offset, out DateTimeOffset time)
    {
        bool read = DateTime.TryParseExact(
            text, ["yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local)
            && local.Year is > 1 and < 9999;
        time = read ? new DateTimeOffset(local, offset) : default;
        return read;
    }
}
