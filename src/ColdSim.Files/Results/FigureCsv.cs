using System.Globalization;
using ColdSim.Planning.Figures;
using CsvHelper;
using UnitsNet;

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
    /// <param name="form">The units and the separator.</param>
    public static void Write<TRow>(
        CsvTable table, IReadOnlyList<Figure<TRow>> figures, IEnumerable<TRow> rows, FigureContext context, TextWriter output, CsvForm form)
    {
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { Separator = form.Separator, NewLine = "\n" }, leaveOpen: true);
        (CsvColumn<TRow> Column, int Place, string Heading)[] columns =
            [.. figures.ColumnsIn(table).Where(c => c.Shown?.Invoke(context) ?? true).SelectMany(c => Each(c, context, form))];
        TRow[] all = [.. rows];
        int firstTime = Array.FindIndex(columns, c => figures.IsTime(c.Column));
        for (int i = 0; i < columns.Length; i++)
        {
            csv.WriteField(CsvText.Of(columns[i].Heading));
            if (i == firstTime)
                csv.WriteField(CsvForm.OffsetHeading);
        }

        csv.EndRecord();
        foreach (TRow row in all)
        {
            object?[] values = [.. columns.Select(c => c.Column.Value(row))];
            DateTimeOffset? first = values.OfType<DateTimeOffset>().Select(t => (DateTimeOffset?)t).FirstOrDefault();
            for (int i = 0; i < columns.Length; i++)
            {
                // One offset holds for all times of a row.
                object? value = values[i] is DateTimeOffset time && first is { } clock ? time.ToOffset(clock.Offset) : values[i];
                csv.WriteField(Cell(value, columns[i].Column, columns[i].Place, form));
                if (i == firstTime)
                    csv.WriteField(first is { } shown ? CsvForm.Offset(shown) : "");
            }

            csv.EndRecord();
        }
    }

    /// <summary>Whether a text's first line is the headings of a file, in any of its forms.</summary>
    public static bool HasHeadings<TRow>(string text, CsvTable table, IReadOnlyList<Figure<TRow>> figures)
    {
        CsvColumn<TRow>[] columns = [.. figures.ColumnsIn(table)];
        int firstTime = Array.FindIndex(columns, c => figures.IsTime(c));
        return CsvForm.All.Any(form =>
        {
            List<HeadingPattern> patterns =
                [.. columns.Select(c => new HeadingPattern(c.Heading + UnitOf(c, form), c.Shown is not null || c.Names is not null, c.Names is not null))];
            if (firstTime >= 0)
                patterns.Insert(firstTime + 1, new(CsvForm.OffsetHeading));
            return CsvHeadings.Match(text, form.Separator, patterns);
        });
    }

    private static string UnitOf<TRow>(CsvColumn<TRow> column, CsvForm form) => column.Unit is null ? "" : $" [{form.Symbol(column.Unit)}]";

    private static IEnumerable<(CsvColumn<TRow> Column, int Place, string Heading)> Each<TRow>(CsvColumn<TRow> column, FigureContext context, CsvForm form)
    {
        string unit = UnitOf(column, form);
        return column.Names is null
            ? [(column, 0, column.Heading + unit)]
            : column.Names(context).Select((name, i) => (column, i, column.Heading.Replace("{name}", name, StringComparison.Ordinal) + unit));
    }

    private static string Cell<TRow>(object? value, CsvColumn<TRow> column, int place, CsvForm form) => value switch
    {
        null => "",
        string text => CsvText.Of(text),
        Word word => word.Key,
        bool flag => flag ? "yes" : "no",
        int count => count.ToString(CultureInfo.InvariantCulture),
        double number => form.Number(number, column.Digits),
        IQuantity quantity => form.Cell(quantity, column.Unit!, column.Digits),
        DateTimeOffset time => CsvForm.Time(time),
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        IReadOnlyList<object?> all => place < all.Count ? Cell(all[place], column, 0, form) : "",
        _ => throw new ArgumentException($"'{column.Heading}' has a value of {value.GetType().Name}, which no cell can hold"),
    };
}
