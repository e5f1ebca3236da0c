using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>
/// PVGIS: lines about the place, a table in UTC, lines of explanation below it. An hourly series of real years, whose sun is on the plane of a panel, or a
/// typical year with the sun on level ground.
/// </summary>
internal static class PvgisCsv
{
    /// <summary>Why a series has no sun; with what is assumed for it, and so no warning.</summary>
    public const string PanelSun = "its sun is on the plane of a panel";

    private const string Accepted = "accepted: such as 20160101:0010";

    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        WeatherStation station = new() { Name = "model cell", Offset = request.Offset };
        string slope = "";
        bool found = false;
        records.Lenient = true;
        while (!found && records.Next())
        {
            string line = records.Text(0);
            found = line is "time" or "time(UTC)";
            if (!found)
                About(line, ref station, ref slope);
        }

        records.Lenient = false;
        if (!found)
        {
            faults.Report(records.Line, 1, "no line of headings that begins with 'time'", "accepted: the service's hourly series or typical year as CSV");
            return;
        }

        string[] headings = records.All();
        bool typical = headings[0] == "time(UTC)";
        SourceTable table = Table(records, headings, slope, rows, faults);
        if (!table.Has(WeatherColumn.Air))
        {
            faults.Report(records.Line, 1, "no column 'T2m'", "accepted: the service's hourly series with its 'PV power' data or not, or its typical year");
            return;
        }

        TimeSpan shown = request.Offset ?? TimeSpan.Zero;
        rows.Station = station;
        rows.Clock = request.Offset is null ? "UTC" : $"UTC, shown as UTC{InstantText.OfOffset(shown)}";
        TypicalYear? year = typical ? new(request, TimeSpan.Zero, rows, faults) { Shown = shown } : null;
        int last = records.Line;
        while (!rows.IsPastWindow && records.Next())
        {
            string text = records.Text(0);

            // The table ends where a line does not begin with a date; what follows explains the columns.
            if (text.Length == 0 || !char.IsAsciiDigit(text[0]))
                break;
            last = records.Line;
            Row(records, headings, text, shown, table, year, rows, faults);
        }

        year?.Finish();
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(last);
    }

    private static void About(string line, ref WeatherStation station, ref string slope)
    {
        int colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
            return;
        string name = line[..colon].Trim(), value = line[(colon + 1)..].Trim();
        double? number = double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double read) ? read : null;
        if (name.StartsWith("Latitude", StringComparison.Ordinal) && number is >= -90 and <= 90)
            station = station with { Latitude_deg = number };
        else if (name.StartsWith("Longitude", StringComparison.Ordinal) && number is >= -180 and <= 180)
            station = station with { Longitude_deg = number };
        else if (name.StartsWith("Elevation", StringComparison.Ordinal) && number is > -9000 and < 9000)
            station = station with { Elevation_m = number };
        else if (name == "Slope")
            slope = value;
    }

    private static SourceTable Table(RecordReader records, string[] headings, string slope, RowCollector rows, WeatherFaults faults)
    {
        SourceTable table = new(records, rows, faults);
        table.Add(WeatherColumn.Air, headings, "T2m", "°C");
        table.Add(WeatherColumn.Humidity, headings, "RH", "%");
        table.Add(WeatherColumn.Wind, headings, "WS10m", "m/s");
        table.Add(WeatherColumn.Pressure, headings, "SP", "Pa");
        table.Add(WeatherColumn.Sun, headings, "G(h)", "W/m²");
        bool level = slope.StartsWith("0 ", StringComparison.Ordinal) || slope.StartsWith("0.0", StringComparison.Ordinal);
        int[] parts = [.. ((string[])["G(i)", "Gb(i)", "Gd(i)", "Gr(i)"]).Select(n => RecordReader.IndexOf(headings, n)).Where(f => f >= 0)];
        if (level && parts.Length > 0)
            table.Add(new SourceColumn(WeatherColumn.Sun, parts[0], headings[parts[0]], WeatherColumn.Sun.Unit("W/m²")) { AlsoAdded = parts[1..] });
        else if (parts.Length > 0)
            faults.Note($"{faults.File}: {PanelSun}, slope {(slope.Length > 0 ? Quote.Of(slope.TrimEnd('.')) : "not said")}, and is not used; with slope 0 it is that on level ground");
        foreach (WeatherColumn column in table.Columns)
            rows.DeclareColumn(column);
        return table;
    }

    private static void Row(RecordReader records, string[] headings, string text, TimeSpan shown, SourceTable table, TypicalYear? year, RowCollector rows, WeatherFaults faults)
    {
        if (records.Count != headings.Length)
            faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {headings.Length} headings"));
        else if (Time(text) is not { } time)
            faults.Report(records.Line, 1, $"{headings[0]}: '{Quote.Of(text)}' is not a date and time", Accepted);
        else
        {
            if (year is not null)
                year.Take(table, time.Year, time.Month, time.Day, (time.Hour * 60) + time.Minute, records.Line);
            else if (table.Row(time.ToOffset(shown)) is { } row)
                rows.Add(row, records.Line);
            return;
        }

        rows.HasSkippedRows = true;
    }

    // 20160131:0010
    private static DateTimeOffset? Time(string text)
        => DateTime.TryParseExact(text, "yyyyMMdd':'HHmm", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime time) && time.Year is >= CalendarYears.First and <= CalendarYears.Last
            ? new DateTimeOffset(time, TimeSpan.Zero) : null;
}
