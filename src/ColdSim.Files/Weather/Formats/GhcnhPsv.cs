using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>GHCN-hourly: fields separated by pipes, times in UTC, each value followed by its codes of quality and source.</summary>
internal static class GhcnhPsv
{
    private const double NoElevation = -999;

    private static readonly (WeatherColumn Column, string Name, string Unit)[] Variables =
    [
        (WeatherColumn.Air, "temperature", "°C"),
        (WeatherColumn.DewPoint, "dew_point_temperature", "°C"),
        (WeatherColumn.Humidity, "relative_humidity", "%"),
        (WeatherColumn.Wind, "wind_speed", "m/s"),
        (WeatherColumn.Pressure, "station_level_pressure", "hPa"),
    ];

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        if (!records.Next())
            return;
        string[] headings = records.All();
        int date = RecordReader.IndexOf(headings, "DATE");
        int[] parts = [.. ((string[])["Year", "Month", "Day", "Hour", "Minute"]).Select(n => RecordReader.IndexOf(headings, n))];
        Dictionary<WeatherColumn, (int Quality, int Source)> codes = Variables.ToDictionary(
            v => v.Column, v => (RecordReader.IndexOf(headings, v.Name + "_Quality_Code"), RecordReader.IndexOf(headings, v.Name + "_Source_Code")));
        SourceTable table = new(records, rows, faults)
        {
            Accepts = c => Passes(records.Text(codes[c].Quality), records.Text(codes[c].Source)),
        };
        foreach ((WeatherColumn column, string name, string unit) in Variables)
            table.Add(column, headings, name, unit, v => v <= -999 || v >= 9999);
        if (!table.Has(WeatherColumn.Air) || (date < 0 && parts.Any(p => p < 0)))
        {
            faults.Report(1, 1, "no column 'temperature', or no time", "accepted: the publisher's headings, DATE or Year, Month, Day, Hour and Minute");
            return;
        }
        int[] sky = [.. headings.Select((h, i) => (h, i)).Where(x => IsSky(x.h)).Select(x => x.i)];
        int report = RecordReader.IndexOf(headings, "temperature_Report_Type");
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        if (sky.Length > 0)
            rows.DeclareColumn(WeatherColumn.Cloud);
        TimeSpan shown = request.Offset ?? TimeSpan.Zero;
        rows.Clock = request.Offset is null ? "UTC" : $"UTC, shown as UTC{InstantText.OfOffset(shown)}";
        rows.EmptyMessage = "no rows with a temperature";
        HourlySelector pick = new(rows, faults);
        bool first = true;
        while (!rows.IsPastWindow && records.Next())
        {
            if (records.Count != headings.Length)
            {
                faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
                rows.HasSkippedRows = true;
                continue;
            }
            if (first)
                rows.Station = Station(records, headings) with { Offset = request.Offset };
            first = false;
            if (Time(records, date, parts) is not { } time)
            {
                if (!records.ReportRepeatedHeadings(headings))
                    faults.Report(records.Line, 1, "the time cannot be read", "accepted: DATE such as 2024-01-31T23:53:00, or whole numbers in Year to Minute");
                rows.HasSkippedRows = true;
                continue;
            }
            if (table.Row(time.ToOffset(shown)) is { } row)
                pick.Add(row with { Cloud_frac = Cloud(records, sky) }, Rank(records.Text(report)), records.Line);
        }
        pick.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    /// <summary>A letter means a failed check; digits are older marks, 2, 3, 6 and 7 for suspect and wrong.</summary>
    internal static bool Passes(string quality, string source) => quality switch
    {
        "" or "0" or "1" or "4" or "9" => true,
        // Some sources have other codes: 5 there means that a value was removed.
        "5" => source is not ("220" or "221" or "222" or "223" or "347" or "348"),
        _ => false,
    };

    private static bool IsSky(string heading)
        => heading.Length > 2 && heading[^2] == '_' && char.IsAsciiDigit(heading[^1])
            && (heading.StartsWith("sky_cover_summation_", StringComparison.OrdinalIgnoreCase)
                || heading.StartsWith("sky_cover_layer_", StringComparison.OrdinalIgnoreCase)
                || (heading.StartsWith("sky_cover_", StringComparison.OrdinalIgnoreCase) && heading.Length == "sky_cover_1".Length));

    // The fullest of the layers.
    private static double? Cloud(RecordReader records, int[] sky)
    {
        double? most = null;
        foreach (int field in sky)
        {
            if (!records.IsEmpty(field) && CloudLayers.Cover_frac(records.Text(field)) is { } part && !(part <= most))
                most = part;
        }
        return most;
    }

    private static int Rank(string type) => type switch
    {
        _ when type.StartsWith("FM15", StringComparison.OrdinalIgnoreCase) || type.StartsWith("FM-15", StringComparison.OrdinalIgnoreCase) => 0,
        _ when type.StartsWith("FM12", StringComparison.OrdinalIgnoreCase) || type.StartsWith("FM-12", StringComparison.OrdinalIgnoreCase) => 1,
        _ when type.StartsWith("FM16", StringComparison.OrdinalIgnoreCase) || type.StartsWith("FM-16", StringComparison.OrdinalIgnoreCase) => 3,
        _ => 2,
    };

    private static DateTimeOffset? Time(RecordReader records, int date, int[] parts)
    {
        if (date >= 0 && DateTime.TryParseExact(
            records.Text(date).TrimEnd('Z'), ["yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime read)
            && read.Year is > 1 and < 9999)
        {
            return new DateTimeOffset(read, TimeSpan.Zero);
        }
        int?[] n = [.. parts.Select(p => records.WholeNumber(p))];
        if (n is not [int year and > 1 and < 9999, int month and >= 1 and <= 12, int day and >= 1, int hour and >= 0 and <= 24, int minute and >= 0 and <= 59]
            || day > DateTime.DaysInMonth(year, month))
        {
            return null;
        }
        return new DateTimeOffset(year, month, day, 0, 0, 0, TimeSpan.Zero).AddMinutes(hour * 60 + minute);
    }

    private static WeatherStation Station(RecordReader records, string[] headings)
    {
        double? Within(string name, double limit)
            => records.TryNumber(RecordReader.IndexOf(headings, name), out double value) && value > NoElevation && Math.Abs(value) <= limit ? value : null;
        return new WeatherStation
        {
            Id = records.Text(RecordReader.IndexOf(headings, "STATION", "Station_ID")),
            Name = records.Text(RecordReader.IndexOf(headings, "Station_name")),
            Latitude_deg = Within("LATITUDE", 90),
            Longitude_deg = Within("LONGITUDE", 180),
            Elevation_m = Within("ELEVATION", 9000),
        };
    }
}
