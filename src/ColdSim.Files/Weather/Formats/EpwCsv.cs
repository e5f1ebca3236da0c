using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>EnergyPlus weather: lines of header, then a row an hour without headings, hours 1 to 24 of local standard time.</summary>
internal static class EpwCsv
{
    private const int FirstHeaderFields = 10;
    private const int LeastFields = 24;

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        TimeSpan? offset = null;
        int perHour = 1;
        (int Month, int Day)? end = null;
        records.Lenient = true;
        bool data = false;
        while (records.Next() && !(data = IsData(records)))
        {
            switch (records.Text(0).ToUpperInvariant())
            {
                case "LOCATION":
                    offset = Location(records, rows, faults);
                    break;
                case "DATA PERIODS":
                    perHour = records.WholeNumber(2) is int n and >= 1 and <= 60 ? n : 1;
                    end = MonthDay(records.Text(6));
                    break;
            }
        }
        records.Lenient = false;
        offset = request.Offset ?? offset;
        if (offset is not { } clock)
        {
            if (!faults.Any)
                faults.Report(1, 1, "no line LOCATION with a time zone", "accepted: as its publisher lays it out, or an offset stated beside the file");
            return;
        }
        rows.Station = rows.Station with { Offset = clock };
        rows.Clock = $"local standard time, UTC{InstantText.OfOffset(clock)}; hour 1 ends at 01:00";
        rows.Averaging = IrradianceAveraging.HourEnding;
        rows.EmptyMessage = "no rows of data";
        SourceTable table = Table(records, rows, faults);
        TypicalYear year = new(request, clock, rows, faults);
        for (; data; data = records.Next())
            Row(records, perHour, table, year, rows, faults);
        year.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        if (end is { } last && year.LastDay is { } seen && seen != last && !faults.Any)
            faults.Warn($"{faults.File}: ends on {seen.Month}/{seen.Day}, its line DATA PERIODS says {last.Month}/{last.Day}; cut short, perhaps");
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static bool IsData(RecordReader records) => records.Count >= 6 && records.WholeNumber(0) is > 0 && records.WholeNumber(1) is not null && records.WholeNumber(2) is not null;

    private static SourceTable Table(RecordReader records, RowCollector rows, WeatherFaults faults)
    {
        SourceTable table = new(records, rows, faults);
        table.Add(new SourceColumn(WeatherColumn.Air, 6, "dry bulb [°C]", WeatherColumn.Air.Unit("°C")) { Missing = SourceColumn.AtLeast(99.9) });
        table.Add(new SourceColumn(WeatherColumn.DewPoint, 7, "dew point [°C]", WeatherColumn.DewPoint.Unit("°C")) { Missing = SourceColumn.AtLeast(99.9) });
        table.Add(new SourceColumn(WeatherColumn.Humidity, 8, "relative humidity [%]", WeatherColumn.Humidity.Unit("%")) { Missing = SourceColumn.AtLeast(999) });
        table.Add(new SourceColumn(WeatherColumn.Pressure, 9, "station pressure [Pa]", WeatherColumn.Pressure.Unit("Pa")) { Missing = SourceColumn.AtLeast(999_999) });
        table.Add(new SourceColumn(WeatherColumn.Sun, 13, "global horizontal [Wh/m²]", WeatherColumn.Sun.Unit("Wh/m²")) { Missing = SourceColumn.AtLeast(9999) });
        table.Add(new SourceColumn(WeatherColumn.Wind, 21, "wind speed [m/s]", WeatherColumn.Wind.Unit("m/s")) { Missing = SourceColumn.AtLeast(999) });
        table.Add(new SourceColumn(WeatherColumn.Cloud, 22, "total sky cover [tenths]", WeatherColumn.Cloud.Unit("tenths")) { Missing = SourceColumn.AtLeast(99) });
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        return table;
    }

    private static void Row(RecordReader records, int perHour, SourceTable table, TypicalYear year, RowCollector rows, WeatherFaults faults)
    {
        if (records.Count < LeastFields)
        {
            faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields"), FormattableString.Invariant($"accepted: {LeastFields} or more in a row of data"));
            rows.HasSkippedRows = true;
            return;
        }
        if (records.WholeNumber(0) is not { } y || records.WholeNumber(1) is not { } month || records.WholeNumber(2) is not { } day || records.WholeNumber(3) is not (int hour and >= 1 and <= 24)
            || records.WholeNumber(4) is not (int minute and >= 0 and <= 60))
        {
            faults.Report(records.Line, 1, "year, month, day, hour and minute cannot be read", "accepted: whole numbers, hour 1 to 24, minute 0 to 60");
            rows.HasSkippedRows = true;
            return;
        }
        // The only row of an hour is for the hour's end, whether its minute is written 0 or 60.
        int within = perHour == 1 || minute == 0 ? 60 : minute;
        year.Take(table, y, month, day, ((hour - 1) * 60) + within, records.Line);
    }

    private static TimeSpan? Location(RecordReader records, RowCollector rows, WeatherFaults faults)
    {
        if (records.Count < FirstHeaderFields)
        {
            faults.Report(records.Line, 1, FormattableString.Invariant($"LOCATION has {records.Count} fields"), "accepted: LOCATION, name, state, country, source, number, latitude, longitude, time zone, elevation");
            return null;
        }
        string place = string.Join(", ", ((string[])[records.Text(1), records.Text(2), records.Text(3)]).Where(t => t is not ("" or "-")));
        rows.Station = new WeatherStation
        {
            Id = records.Text(5),
            Name = place,
            Latitude_deg = records.NumberWithin(6, 90),
            Longitude_deg = records.NumberWithin(7, 180),
            Elevation_m = records.NumberWithin(9, 9999),
        };
        if (records.TryNumber(8, out double hours) && InstantText.OffsetFromHours(hours) is { } offset)
            return offset;
        faults.Report(records.Line, records.ColumnOf(8), $"LOCATION: the time zone '{Quote.Of(records.Text(8))}' cannot be read", "accepted: hours from UTC, such as -6.0");
        return null;
    }

    private static (int, int)? MonthDay(string text)
    {
        string[] parts = text.Split('/');
        return parts.Length >= 2 && int.TryParse(parts[0].Trim(), CultureInfo.InvariantCulture, out int month) && int.TryParse(parts[1].Trim(), CultureInfo.InvariantCulture, out int day)
            ? (month, day) : null;
    }
}
