using System.Globalization;
using ColdSim.Model.Weather;
using CsvHelper;

namespace ColdSim.Files.Weather;

/// <summary>Writes rows of weather as the CSV that <see cref="WeatherCsv"/> reads.</summary>
public static class WeatherCsvWriter
{
    private const double Zero_K = 273.15;

    /// <summary>Writes the rows; columns that no row has are left out.</summary>
    /// <param name="rows">In order of time.</param>
    /// <param name="output">Takes the text.</param>
    /// <param name="comment">Lines to stand above it, or null.</param>
    public static void Write(IReadOnlyList<WeatherRow> rows, TextWriter output, string? comment = null)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(output);
        (WeatherColumn Column, Func<WeatherRow, double?> Value, string Format)[] columns =
        [
            (WeatherColumn.Air, r => r.Air_K - Zero_K, "0.##"),
            (WeatherColumn.Wind, r => r.Wind_m_s, "0.##"),
            (WeatherColumn.DewPoint, r => r.DewPoint_K - Zero_K, "0.##"),
            (WeatherColumn.Sun, r => r.Sun_W_m2, "0.#"),
            (WeatherColumn.Cloud, r => r.Cloud_frac * 100, "0.#"),
            (WeatherColumn.Pressure, r => r.Pressure_Pa / 100, "0.##"),
        ];
        columns = [.. columns.Where(c => rows.Any(r => c.Value(r) is not null))];
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', CommentPrefix = '#', NewLine = "\n" }, leaveOpen: true);
        foreach (string line in comment?.Split('\n') ?? [])
            csv.WriteComment(line);
        csv.WriteField("time");
        foreach ((WeatherColumn column, _, _) in columns)
            csv.WriteField(column.Example);
        csv.EndRecord();
        foreach (WeatherRow row in rows)
        {
            csv.WriteField(WeatherGaps.Text(row.Time));
            foreach ((_, Func<WeatherRow, double?> value, string format) in columns)
                csv.WriteField(value(row)?.ToString(format, CultureInfo.InvariantCulture) ?? "");
            csv.EndRecord();
        }
    }
}
