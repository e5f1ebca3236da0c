using System.Text;
using ColdSim.Files.Quantities;
using ColdSim.Model.Weather;
using CsvHelper;

namespace ColdSim.Files.Weather.Formats;

/// <summary>Reads the current record of a CSV reader as a row of weather.</summary>
internal sealed class WeatherRowReader(CsvReader csv, char separator, WeatherHeader header, TimeSpan? offset, ColumnCheck values, WeatherFaults faults)
{
    /// <summary>Rows whose air is marked as not known; they are left out.</summary>
    public int WithoutAir { get; private set; }

    private int Line => (int)csv.LineNumber;

    /// <summary>The row; null, and a fault, where its time or air cannot be read.</summary>
    public WeatherRow? Read()
    {
        if (csv.FieldCount != header.Count)
        {
            string hint = csv.FieldCount > header.Count ? "; a decimal comma, perhaps" : "";
            faults.Report(Line, 1, FormattableString.Invariant($"{csv.FieldCount} fields under {header.Count} headings{hint}"),
                FormattableString.Invariant($"accepted: {header.Count} fields, numbers with a point"));
            return null;
        }
        DateTimeOffset? time = Time();
        if (time is not null)
            faults.At = time;
        if (time is null && IsHeadings())
        {
            faults.Report(Line, 1, "the headings are here again", RecordReader.OneHeadingRow);
            return null;
        }

        double? air = Value(WeatherColumn.Air, out bool isMarked);
        if (air is null && csv.GetString(header.Of(WeatherColumn.Air).Field).AsSpan().IsWhiteSpace())
            Report(WeatherColumn.Air, "is empty", "accepted: a temperature in every row");
        double? humidity = Value(WeatherColumn.Humidity, out _);
        double? dewPoint = Value(WeatherColumn.DewPoint, out _) ?? (air is { } a && humidity is { } h ? WeatherColumn.DewPoint_K(a, h) : null);
        double? wind = Value(WeatherColumn.Wind, out _);
        double? sun = Value(WeatherColumn.Sun, out _);
        double? cloud = Value(WeatherColumn.Cloud, out _);
        double? pressure = Value(WeatherColumn.Pressure, out _);
        if (time is not { } instant)
            return null;
        if (isMarked)
        {
            WithoutAir++;
            return null;
        }

        // A row with a faulty number still counts as a row, so that no gap is reported for it.
        return new WeatherRow(instant, air ?? double.NaN, wind, dewPoint, sun, cloud, pressure);
    }

    // As in files that were joined.
    private bool IsHeadings() => csv.GetString(header.Time).Trim() == csv.Headers[header.Time].Trim();

    private DateTimeOffset? Time()
    {
        string text = csv.GetString(header.Time);
        InstantText.Outcome outcome = InstantText.TryRead(text, offset, out DateTimeOffset time);
        if (outcome == InstantText.Outcome.Read)
            return time;
        if (outcome == InstantText.Outcome.WithoutOffset)
        {
            faults.Report(Line, ColumnOf(header.Time), $"time: '{Quote.Of(text.Trim())}' has no offset from UTC",
                "accepted: such as 2025-01-14T17:00-07:00, or offset = \"-07:00\" under [weather], or --offset of 'coldsim weather'");
        }
        else if (!IsHeadings())
        {
            faults.Report(Line, ColumnOf(header.Time), $"time: '{Quote.Of(text.Trim())}' is not a date and time", InstantText.Accepted);
        }
        return null;
    }

    private double? Value(WeatherColumn column, out bool isMarked)
    {
        isMarked = false;
        if (!header.Has(column))
            return null;
        (int field, UnitSpelling unit, _) = header.Of(column);
        string text = csv.GetString(field).Trim();
        if (text.Length == 0)
            return null;
        // Where fields are not separated by commas, a spreadsheet may have written a comma as the decimal sign.
        if (separator != ',' && text.Count(c => c == ',') == 1 && !text.Contains('.', StringComparison.Ordinal))
            text = text.Replace(',', '.');
        if (!NumberText.TryRead(text, out double value, out string rest, out string fault) || rest.Length > 0)
        {
            if (fault.StartsWith("a decimal", StringComparison.Ordinal))
                Report(column, fault, null);
            else
                Report(column, $"'{Quote.Of(text)}' is not a number", "accepted: a number, or nothing where it is not known");
            return null;
        }
        double si = unit.ToSi(value);
        switch (values.Of(column, value, Line, ref si))
        {
            case ColumnCheck.Outcome.Value:
                return si;
            case ColumnCheck.Outcome.NotKnown:
                isMarked = true;
                return null;
        }

        Report(column, $"{text} is out of range", $"accepted: {column.Low} to {column.High}");
        return null;
    }

    private void Report(WeatherColumn column, string what, string? accepted)
        => faults.Report(Line, ColumnOf(header.Of(column).Field), $"{header.Of(column).Heading}: {what}", accepted);

    private int ColumnOf(int field)
    {
        int column = 1;
        for (int i = 0; i < field; i++)
            column += Encoding.UTF8.GetCharCount(csv.GetRawSpan(i)) + 1;
        return column;
    }
}
