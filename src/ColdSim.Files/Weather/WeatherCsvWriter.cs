using System.Globalization;
using ColdSim.Files.Disk;
using ColdSim.Model.Weather;
using CsvHelper;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Files.Weather;

/// <summary>Writes rows of weather one by one in our own CSV layout.</summary>
public sealed class WeatherCsvWriter : IDisposable
{
    private static readonly (WeatherColumn Column, Func<WeatherRow, double?> Value, string Format)[] All =
    [
        (WeatherColumn.Air, r => r.Air_K - ZeroCelsius_K, "0.##"),
        (WeatherColumn.Wind, r => r.Wind_m_s, "0.##"),
        (WeatherColumn.DewPoint, r => r.DewPoint_K - ZeroCelsius_K, "0.##"),
        (WeatherColumn.Sun, r => r.Sun_W_m2, "0.#"),
        (WeatherColumn.Cloud, r => r.Cloud_frac * 100, "0.#"),
        (WeatherColumn.Pressure, r => r.Pressure_Pa / 100, "0.##"),
    ];

    private const string FromFile = " From ";

    private readonly CsvWriter _csv;
    private readonly (Func<WeatherRow, double?> Value, string Format)[] _columns;

    /// <summary>Our own CSV of weather as it is made from another file: the comment above it says from which.</summary>
    public static OutputKind Kind => new("weather", IsMadeFromAFile);

    /// <summary>The first line of comment of weather that is made from a file.</summary>
    public static string MadeFrom(string file, WeatherFormat format) => $"{FromFile}{file}, {format.Title()}.";

    /// <summary>Writes the headings; columns that no row has are left out.</summary>
    /// <param name="output">Receives the text; stays open.</param>
    /// <param name="counts">Which columns the rows have.</param>
    /// <param name="comment">Comment lines above the headings, or null.</param>
    public WeatherCsvWriter(TextWriter output, ColumnCounts counts, string? comment = null)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(counts);
        _csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', CommentPrefix = '#', NewLine = "\n" }, leaveOpen: true);
        foreach (string line in comment?.Split('\n') ?? [])
            _csv.WriteComment(VisibleText.Of(line));
        _csv.WriteField("time");
        (WeatherColumn Column, Func<WeatherRow, double?> Value, string Format)[] had = [.. All.Where(c => counts.Has(c.Column))];
        foreach ((WeatherColumn column, _, _) in had)
            _csv.WriteField(column.Example);
        _csv.EndRecord();
        _columns = [.. had.Select(c => (c.Value, c.Format))];
    }

    /// <summary>Writes all rows.</summary>
    /// <param name="rows">In order of time.</param>
    /// <param name="output">Receives the text; stays open.</param>
    /// <param name="comment">Comment lines above the headings, or null.</param>
    public static void Write(IReadOnlyList<WeatherRow> rows, TextWriter output, string? comment = null)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ColumnCounts counts = new();
        foreach (WeatherRow row in rows)
            counts.Add(row);
        using WeatherCsvWriter writer = new(output, counts, comment);
        foreach (WeatherRow row in rows)
            writer.Add(row);
    }

    private static bool IsMadeFromAFile(string text)
    {
        string first = text.Split('\n', 2)[0];
        if (!first.StartsWith('#' + FromFile, StringComparison.Ordinal) || !WeatherFormatNames.Titles.Any(t => first.EndsWith($", {t}.", StringComparison.Ordinal)))
            return false;
        int headings = 0;
        while (text.AsSpan(headings).StartsWith("#"))
        {
            headings = text.IndexOf('\n', headings) + 1;
            if (headings == 0)
                return false;
        }

        return CsvHeadings.Match(text[headings..], ',', [new("time"), .. All.Select(c => new HeadingPattern(c.Column.Example, IsOptional: true))]);
    }

    /// <summary>Writes the next row.</summary>
    public void Add(in WeatherRow row)
    {
        _csv.WriteField(InstantText.Of(row.Time));
        foreach ((Func<WeatherRow, double?> value, string format) in _columns)
            _csv.WriteField(value(row)?.ToString(format, CultureInfo.InvariantCulture) ?? "");
        _csv.EndRecord();
    }

    /// <summary>Writes what is still buffered; the output stays open.</summary>
    public void Dispose() => _csv.Dispose();
}
