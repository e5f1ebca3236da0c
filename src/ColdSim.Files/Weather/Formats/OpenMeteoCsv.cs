using System.Globalization;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Open-Meteo's export: two lines about the place, then hourly rows under headings with units, on one fixed offset.</summary>
internal static class OpenMeteoCsv
{
    public static void Read(RecordReader records, WeatherRequest request, RowCollector rows, WeatherFaults faults)
    {
        TimeSpan? offset = null;
        if (!records.Next())
            return;
        if (RecordReader.IndexOf(records.All(), "location_id") >= 0)
        {
            faults.Report(records.Line, 1, "the file holds several places", "accepted: an export of one place");
            return;
        }
        if (RecordReader.IndexOf(records.All(), "utc_offset_seconds") >= 0)
        {
            string[] about = records.All();
            if (!records.Next())
            {
                faults.Report(1, 1, "nothing below the first line");
                return;
            }
            offset = Place(records, about, rows);
            if (!records.Next())
            {
                faults.Report(records.Line, 1, "no headings below the lines about the place");
                return;
            }
        }
        string[] headings = records.All();
        SourceTable table = new(records, rows, faults);
        int time = Array.FindIndex(headings, h => Name(h) == "time");
        Columns(headings, table, rows, records, faults);
        if (faults.Any)
            return;
        if (time < 0 || !table.Has(WeatherColumn.Air))
        {
            faults.Report(records.Line, 1, time < 0 ? "no column 'time'" : "no column 'temperature_2m'", "accepted: an hourly export with temperature_2m");
            return;
        }
        offset = request.Offset ?? offset;
        rows.Station = rows.Station with { Offset = offset };
        rows.Clock = offset is { } o ? $"one fixed offset, UTC{InstantText.OfOffset(o)}" : "UTC";
        Rows(records, headings.Length, time, offset, table, rows, faults);
        rows.HasSkippedRows |= records.HasBroken;
        table.NoteLeftOut();
        rows.Finish(records.Line);
    }

    private static void Rows(RecordReader records, int fields, int time, TimeSpan? offset, SourceTable table, RowCollector rows, WeatherFaults faults)
    {
        while (!rows.IsPastWindow && records.Next())
        {
            if (Name(records.Text(time)) == "time" || records.Text(0) == "time")
            {
                faults.Warn($"{faults.File}: a further block from line {records.Line} on is not used");
                return;
            }
            if (records.Count != fields)
            {
                faults.Report(records.Line, 1, FormattableString.Invariant($"{records.Count} fields under {fields} headings"));
                rows.HasSkippedRows = true;
                continue;
            }
            if (Time(records.Text(time), offset, out string fault) is not { } instant)
            {
                faults.Report(records.Line, records.ColumnOf(time), $"time: {fault}", "accepted: such as 2024-01-31T23:00, or seconds since 1970");
                rows.HasSkippedRows = true;
                continue;
            }
            if (table.Row(instant) is { } row)
                rows.Add(row, records.Line);
        }
    }

    private static void Columns(string[] headings, SourceTable table, RowCollector rows, RecordReader records, WeatherFaults faults)
    {
        for (int i = 0; i < headings.Length; i++)
        {
            string name = Name(headings[i]);
            if (OpenMeteoVariables.Column(name) is not { } column || table.Has(column))
                continue;
            int open = headings[i].IndexOf('(', StringComparison.Ordinal);
            string? unit = open < 0 ? null : headings[i][(open + 1)..].TrimEnd(')', ' ');
            if (OpenMeteoVariables.Unit(column, unit) is not { } known)
            {
                faults.Report(records.Line, records.ColumnOf(i), $"column '{Quote.Of(name)}': unknown unit '{Quote.Of(unit!)}'");
                continue;
            }
            table.Add(new SourceColumn(column, i, headings[i], known));
            rows.DeclareColumn(column);
            if (column == WeatherColumn.Sun)
                rows.Averaging = OpenMeteoVariables.Averaging(name);
        }
    }

    private static string Name(string heading)
    {
        int open = heading.IndexOf('(', StringComparison.Ordinal);
        return (open < 0 ? heading : heading[..open]).Trim();
    }

    private static TimeSpan? Place(RecordReader records, string[] about, RowCollector rows)
    {
        double? Number(string name) => records.TryNumber(RecordReader.IndexOf(about, name), out double value) ? value : null;
        rows.Station = new WeatherStation
        {
            Name = "model cell",
            Latitude_deg = Number("latitude"),
            Longitude_deg = Number("longitude"),
            Elevation_m = Number("elevation"),
        };
        return Number("utc_offset_seconds") is { } seconds ? InstantText.OffsetFromHours(seconds / 3600) : null;
    }

    private static DateTimeOffset? Time(string text, TimeSpan? offset, out string fault)
    {
        fault = $"'{Quote.Of(text)}' is not a date and time";
        // Seconds since 1970 are UTC whatever the offset.
        if (text.Length >= 9 && long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long seconds))
        {
            return Math.Abs(seconds) < 100_000_000_000 ? DateTimeOffset.FromUnixTimeSeconds(seconds).ToOffset(offset ?? TimeSpan.Zero) : null;
        }
        // Without the lines about the place times are in UTC, as the service's default is.
        return InstantText.TryRead(text, offset ?? TimeSpan.Zero, out DateTimeOffset time) == InstantText.Outcome.Read ? time : null;
    }
}
