using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Typical meteorological year, third edition: a line about the station, one of headings, hours that end at their stamp.</summary>
internal static class Tmy3Csv
{
    private const double MissingBelow = -9900;
    private const int Hours = 8760;

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        TimeSpan? offset = records.Next() ? Station(records, rows) : null;
        offset = request.Offset ?? offset;
        if (offset is not { } clock)
        {
            faults.Report(1, 1, "the first line has no time zone in its fourth field", "accepted: number, name, state, time zone, latitude, longitude, elevation");
            return;
        }
        if (!records.Next())
        {
            faults.Report(2, 1, "no line of headings");
            return;
        }
        string[] headings = records.All();
        SourceTable table = new(records, rows, faults);
        table.Add(WeatherColumn.Air, headings, "Dry-bulb (C)", "°C", SourceColumn.AtMost(MissingBelow));
        table.Add(WeatherColumn.DewPoint, headings, "Dew-point (C)", "°C", SourceColumn.AtMost(MissingBelow));
        table.Add(WeatherColumn.Humidity, headings, "RHum (%)", "%", SourceColumn.AtMost(MissingBelow));
        table.Add(WeatherColumn.Pressure, headings, "Pressure (mbar)", "mbar", SourceColumn.AtMost(MissingBelow));
        table.Add(WeatherColumn.Wind, headings, "Wspd (m/s)", "m/s", SourceColumn.AtMost(MissingBelow));
        table.Add(WeatherColumn.Sun, headings, "GHI (W/m^2)", "Wh/m²", SourceColumn.AtMost(MissingBelow));
        table.Add(WeatherColumn.Cloud, headings, "TotCld (tenths)", "tenths", v => v <= MissingBelow || v >= 99);
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        if (!table.Has(WeatherColumn.Air))
        {
            faults.Report(records.Line, 1, "no column 'Dry-bulb (C)'", "accepted: the headings of the third edition");
            return;
        }
        rows.Station = rows.Station with { Offset = clock };
        rows.Clock = $"local standard time, UTC{InstantText.OfOffset(clock)}; each hour ends at its stamp";
        rows.Averaging = IrradianceAveraging.HourEnding;
        TypicalYear year = new(request, clock, rows, faults);
        int read = 0;
        while (records.Next())
        {
            if (Row(records, headings, table, year, rows, faults))
                read++;
        }
        year.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        if (read < Hours && !faults.Any && year.EndsWithDay)
            faults.Note($"{faults.File}: {read} hours, a whole year has {Hours}");
        else if (read < Hours && !faults.Any)
            faults.Warn($"{faults.File}: {read} hours, a whole year has {Hours}, and the last day does not end; cut short, perhaps");
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static bool Row(RecordReader records, string[] headings, SourceTable table, TypicalYear year, RowCollector rows, WeatherFaults faults)
    {
        if (records.Count != headings.Length)
        {
            faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
            rows.HasSkippedRows = true;
            return false;
        }
        string date = records.Text(0);
        string clock = records.Text(1);
        if (!DateOnly.TryParseExact(date.Replace("02/29/", "02/28/", StringComparison.Ordinal), ["MM/dd/yyyy", "M/d/yyyy", "M/d/yy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            || !TryMinute(clock, out int minute))
        {
            if (!records.ReportRepeatedHeadings(headings))
                faults.Report(records.Line, 1, $"'{Quote.Of(date)} {Quote.Of(clock)}' is not a date and time", "accepted: such as 01/31/1988 and 24:00");
            rows.HasSkippedRows = true;
            return false;
        }
        year.Take(table, day.Year, day.Month, date.StartsWith("02/29/", StringComparison.Ordinal) ? 29 : day.Day, minute, records.Line);
        return true;
    }

    internal static bool TryMinute(string clock, out int minute)
    {
        minute = 0;
        string[] parts = clock.Split(':');
        if (parts.Length is < 2 or > 3 || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int hour)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int past) || past > 59)
        {
            return false;
        }
        minute = hour * 60 + past;
        return minute <= 24 * 60;
    }

    private static TimeSpan? Station(RecordReader records, RowCollector rows)
    {
        rows.Station = new WeatherStation
        {
            Id = records.Text(0),
            Name = $"{records.Text(1)}, {records.Text(2)}",
            Latitude_deg = records.TryNumber(4, out double latitude) && Math.Abs(latitude) <= 90 ? latitude : null,
            Longitude_deg = records.TryNumber(5, out double longitude) && Math.Abs(longitude) <= 180 ? longitude : null,
            Elevation_m = records.TryNumber(6, out double elevation) ? elevation : null,
        };
        return records.TryNumber(3, out double hours) ? InstantText.OffsetFromHours(hours) : null;
    }
}
