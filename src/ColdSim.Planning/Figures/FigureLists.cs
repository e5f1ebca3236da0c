namespace ColdSim.Planning.Figures;

/// <summary>What is asked of a list of figures: its columns in one table or file, groups opened.</summary>
internal static class FigureLists
{
    /// <summary>The columns of a table of text or screen, in their order.</summary>
    /// <param name="figures">The row's figures.</param>
    /// <param name="table">The table whose columns are wanted.</param>
    public static IReadOnlyList<FigureColumn<TRow>> ColumnsIn<TRow>(this IEnumerable<Figure<TRow>> figures, ReportTable table)
        => [.. figures.WithParts().SelectMany(f => f.Columns).Where(c => c.Table == table).OrderBy(c => c.Order)];

    /// <summary>The columns of a CSV file, in their order.</summary>
    /// <param name="figures">The row's figures.</param>
    /// <param name="file">The file whose columns are wanted.</param>
    public static IReadOnlyList<CsvColumn<TRow>> ColumnsIn<TRow>(this IEnumerable<Figure<TRow>> figures, CsvTable file)
        => [.. figures.WithParts().SelectMany(f => f.Csv).Where(c => c.File == file).OrderBy(c => c.Order)];

    /// <summary>Whether a column of a CSV file holds instants.</summary>
    /// <param name="figures">The row's figures.</param>
    /// <param name="column">One of their columns.</param>
    public static bool IsTime<TRow>(this IEnumerable<Figure<TRow>> figures, CsvColumn<TRow> column)
        => figures.WithParts().Any(f => f.Kind == FigureKind.Time && f.Csv.Contains(column));

    private static IEnumerable<Figure<TRow>> WithParts<TRow>(this IEnumerable<Figure<TRow>> figures)
        => figures.SelectMany(f => f.Projected.WithParts().Prepend(f));
}
