using System.Text;
using ColdSim.Model.Weather;
using CsvHelper;

namespace ColdSim.Files.Weather;

/// <summary>Reads hourly weather from comma-separated text; docs/weather-csv.md describes it.</summary>
public static class WeatherCsv
{
    /// <summary>Reads a weather file; never throws for its content.</summary>
    /// <param name="input">The text.</param>
    /// <param name="name">The file's name in messages.</param>
    /// <param name="offset">Offset from UTC of times that are written without one; null refuses such times.</param>
    public static WeatherResult Read(TextReader input, string name, TimeSpan? offset)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(name);
        WeatherFaults faults = new(name);
        List<WeatherRow> rows = [];
        try
        {
            ReadRows(input, offset, rows, faults);
        }
        catch (Exception e) when (e is IOException or CsvFormatException or DecoderFallbackException or InvalidOperationException)
        {
            faults.Report(1, 1, "cannot be read: " + e.Message);
        }
        if (faults.Any)
            rows.Clear();
        return new WeatherResult { Rows = rows, Problems = faults.Problems(), Warnings = faults.Warnings, Notes = faults.Notes };
    }

    private static void ReadRows(TextReader input, TimeSpan? offset, List<WeatherRow> rows, WeatherFaults faults)
    {
        bool malformed = false;
        bool skipped = false;
        CsvReaderOptions options = new()
        {
            Separator = ',',
            CommentPrefix = '#',
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = false,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            MalformedData = CsvMalformedDataHandling.Recover,
            OnMalformedRecord = _ => malformed = true,
        };
        using CsvReader csv = CsvReader.Create(input, options, leaveOpen: true);
        csv.ReadHeader();
        if (csv.Headers.Count == 0)
        {
            faults.Report(1, 1, "the file is empty", "accepted: a row of headings, such as time,air [°C], and rows below it");
            return;
        }
        if (WeatherHeader.Read(csv.Headers, (int)csv.LineNumber, faults) is not { } header)
            return;
        List<(DateTimeOffset Time, int Line)> times = [];
        WeatherRowReader reader = new(csv, header, offset, faults);
        while (csv.Read())
        {
            if (malformed)
            {
                malformed = false;
                skipped = true;
                faults.Report((int)csv.LineNumber, 1, "a quotation mark that does not open and close a field");
                continue;
            }
            if (reader.Read() is not { } row)
            {
                skipped = true;
                continue;
            }
            if (times.Count > 0 && !Follows(times[^1], row.Time, (int)csv.LineNumber, faults))
                continue;
            times.Add((row.Time, (int)csv.LineNumber));
            rows.Add(row);
        }
        if (rows.Count < 2 && !faults.Any)
            faults.Report((int)Math.Max(1, csv.LineNumber), 1, rows.Count == 0 ? "no rows below the headings" : "only one row", "accepted: two or more");
        // A row that could not be read leaves a gap that is not in the file.
        if (!skipped)
            WeatherGaps.Check(times, faults);
        if (!faults.Any)
            FillColumns(rows, header, faults);
    }

    private static bool Follows((DateTimeOffset Time, int Line) last, DateTimeOffset time, int line, WeatherFaults faults)
    {
        if (time > last.Time)
            return true;
        string before = FormattableString.Invariant($"{WeatherGaps.Text(last.Time)} in line {last.Line}");
        if (time == last.Time)
            faults.Report(line, 1, $"{WeatherGaps.Text(time)} is the same instant as {before}");
        else
            faults.Report(line, 1, $"{WeatherGaps.Text(time)} comes after {before}", "accepted: rows in order of time");
        return false;
    }

    private static void FillColumns(List<WeatherRow> rows, WeatherHeader header, WeatherFaults faults)
    {
        if (header.Has(WeatherColumn.Wind))
            MissingValues.Fill(rows, "wind", r => r.Wind_m_s, (r, v) => r with { Wind_m_s = v }, faults);
        if (header.Has(WeatherColumn.DewPoint) || header.Has(WeatherColumn.Humidity))
            MissingValues.Fill(rows, "dew point", r => r.DewPoint_K, (r, v) => r with { DewPoint_K = v }, faults);
        if (header.Has(WeatherColumn.Sun))
            MissingValues.Fill(rows, "sun", r => r.Sun_W_m2, (r, v) => r with { Sun_W_m2 = v }, faults);
        if (header.Has(WeatherColumn.Cloud))
            MissingValues.Fill(rows, "cloud", r => r.Cloud_frac, (r, v) => r with { Cloud_frac = v }, faults);
        if (header.Has(WeatherColumn.Pressure))
            MissingValues.Fill(rows, "pressure", r => r.Pressure_Pa, (r, v) => r with { Pressure_Pa = v }, faults);
    }
}
