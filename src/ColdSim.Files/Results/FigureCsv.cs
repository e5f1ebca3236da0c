using System.Globalization;
using ColdSim.Planning.Figures;
using CsvHelper;
using UnitsNet;
using UnitsNet.Units;

namespace ColdSim.Files.Results;

/// <summary>Writes rows of figures as CSV, units in the headings; a cell is empty where a figure does not apply.</summary>
internal static class FigureCsv
{
    /// <summary>Writes a file.</summary>
    /// <param name="table">Which file, and so which columns.</param>
    /// <param name="figures">The rows' figures.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="context">What headings need to know.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write<TRow>(
        CsvTable table, IReadOnlyList<Figure<TRow>> figures, IEnumerable<TRow> rows, FigureContext context, TextWriter output)
    {
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = ',', NewLine = "\n" }, leaveOpen: true);
        (CsvColumn<TRow> Column, int Place, string Heading)[] columns = [.. figures.ColumnsIn(table).Where(c => c.Shown?.Invoke(context) ?? true).SelectMany(c => Each(c, context))];
        foreach ((_, _, string heading) in columns)
            csv.WriteField(CsvText.Of(heading));
        csv.EndRecord();
        foreach (TRow row in rows)
        {
            foreach ((CsvColumn<TRow> column, int place, _) in columns)
                csv.WriteField(Cell(column.Value(row), column, place));
            csv.EndRecord();
        }
    }

    /// <summary>Whether a text's first line is the headings of a file.</summary>
    public static bool HasHeadings<TRow>(string text, CsvTable table, IReadOnlyList<Figure<TRow>> figures)
        => CsvHeadings.Match(text, [.. figures.ColumnsIn(table).Select(c => new HeadingPattern(c.Heading + UnitOf(c), c.Shown is not null || c.Names is not null, c.Names is not null))]);

    private static string UnitOf<TRow>(CsvColumn<TRow> column) => column.Unit is null ? "" : $" [{Symbol(column.Unit)}]";

    private static IEnumerable<(CsvColumn<TRow> Column, int Place, string Heading)> Each<TRow>(CsvColumn<TRow> column, FigureContext context)
    {
        string unit = UnitOf(column);
        return column.Names is null
            ? [(column, 0, column.Heading + unit)]
            : column.Names(context).Select((name, i) => (column, i, column.Heading.Replace("{name}", name, StringComparison.Ordinal) + unit));
    }

    private static string Cell<TRow>(object? value, CsvColumn<TRow> column, int place) => value switch
    {
        null => "",
        string text => CsvText.Of(text),
        Word word => word.Key,
        bool flag => flag ? "yes" : "no",
        int count => count.ToString(CultureInfo.InvariantCulture),
        double number => Number(number, column.Digits),
        IQuantity quantity => Number(quantity.As(column.Unit!), column.Digits),
        DateTimeOffset time => FigureJson.Instant(time),
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        IReadOnlyList<object?> all => place < all.Count ? Cell(all[place], column, 0) : "",
        _ => throw new ArgumentException($"'{column.Heading}' has a value of {value.GetType().Name}, which no cell can hold"),
    };

    /// <summary>A number with fixed decimals; empty where it is not finite. Rounded first, so that a hair below zero gets no minus.</summary>
    public static string Number(double value, int digits) => !double.IsFinite(value) ? ""
        : (Math.Round(value, digits) + 0.0).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Symbol(Enum unit) => unit switch
    {
        MassUnit.Kilogram => "kg",
        TemperatureUnit.DegreeCelsius => "°C",
        TemperatureDeltaUnit.Kelvin => "K",
        PowerUnit.Watt => "W",
        EnergyUnit.WattHour => "Wh",
        EnergyUnit.Megajoule => "MJ",
        DurationUnit.Minute => "min",
        DurationUnit.Hour => "h",
        RatioUnit.Percent => "%",
        PressureUnit.Kilopascal => "kPa",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "no symbol"),
    };
}
