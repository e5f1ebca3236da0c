using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace ColdSim.Planning.Figures;

/// <summary>One reported value of a row, declared once: its key, what it is, where it comes from, how it is headed, rounded and explained.</summary>
/// <remarks>
/// The text tables, the screen's tables, CSV, JSON and the tables of docs/json.md are all made from such declarations, so a figure that is
/// added to a row's list appears in every one of them.
/// </remarks>
/// <typeparam name="TRow">The row that is reported.</typeparam>
[SuppressMessage("Design", "CA1000", Justification = "A list of figures names its row once, by an alias, and each figure is then one short line.")]
public sealed class Figure<TRow> : IFigure
{
    private readonly Func<TRow, object?> _value;
    private readonly IReadOnlyList<Figure<TRow>> _projected;

    private Figure(string key, FigureKind kind, Func<TRow, object?> value, string explanation)
    {
        (Key, Kind, _value, Explanation, _projected) = (key, kind, value, explanation, []);
    }

    private Figure(Figure<TRow> other, Func<TRow, object?> value, IReadOnlyList<Figure<TRow>> projected)
    {
        (Key, Kind, Explanation, CanBeAbsent, Unit, Exact, Parts) = (other.Key, other.Kind, other.Explanation, other.CanBeAbsent, other.Unit, other.Exact, other.Parts);
        (Csv, Columns, InDocuments, _value, _projected) = (other.Csv, other.Columns, other.InDocuments, value, projected);
    }

    /// <inheritdoc/>
    public string Key { get; }

    /// <inheritdoc/>
    public FigureKind Kind { get; }

    /// <inheritdoc/>
    public string Explanation { get; }

    /// <inheritdoc/>
    public bool CanBeAbsent { get; private init; }

    /// <inheritdoc/>
    public Enum? Unit { get; private init; }

    /// <inheritdoc/>
    public bool Exact { get; private init; }

    /// <inheritdoc/>
    public IReadOnlyList<IFigure> Parts { get; private init; } = [];

    /// <inheritdoc/>
    public bool InDocuments { get; private init; } = true;

    /// <summary>The columns of CSV files it has; mostly one.</summary>
    public IReadOnlyList<CsvColumn<TRow>> Csv { get; private init; } = [];

    /// <summary>The columns it has in tables of text and screen.</summary>
    public IReadOnlyList<FigureColumn<TRow>> Columns { get; private init; } = [];

    /// <summary>The figures of a group, read from the row that holds the group; empty for others.</summary>
    public IReadOnlyList<Figure<TRow>> Projected => _projected;

    /// <summary>The row's value: null, a text, number, flag, time, <see cref="Word"/>, quantity, or rows of figures.</summary>
    public object? ValueOf(TRow row) => _value(row);

    /// <summary>A text.</summary>
    public static Figure<TRow> Text(string key, Func<TRow, string?> value, string explanation, bool canBeAbsent = false)
        => new(key, FigureKind.Text, value, explanation) { CanBeAbsent = canBeAbsent };

    /// <summary>One of a set of words.</summary>
    public static Figure<TRow> Word<T>(string key, Func<TRow, T?> value, WordTable<T> words, string explanation, bool canBeAbsent = false) where T : struct, Enum
        => new(key, FigureKind.Text, row => value(row) is { } one ? words[one] : null, $"{explanation}: {words.Listed}") { CanBeAbsent = canBeAbsent };

    /// <summary>True or false.</summary>
    public static Figure<TRow> Flag(string key, Func<TRow, bool> value, string explanation) => new(key, FigureKind.Flag, row => value(row), explanation);

    /// <summary>A whole number.</summary>
    public static Figure<TRow> Count(string key, Func<TRow, int?> value, string explanation, bool canBeAbsent = false)
        => new(key, FigureKind.Number, row => value(row), explanation) { CanBeAbsent = canBeAbsent };

    /// <summary>A number without a unit, or in the unit that its key names.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="value">The number; null or not finite where it does not apply.</param>
    /// <param name="explanation">One line for the pages of documentation.</param>
    /// <param name="canBeAbsent">Whether it may be absent.</param>
    /// <param name="exact">Whether documents keep every digit instead of rounding to a millionth.</param>
    public static Figure<TRow> Number(string key, Func<TRow, double?> value, string explanation, bool canBeAbsent = false, bool exact = false)
        => new(key, FigureKind.Number, row => value(row), explanation) { CanBeAbsent = canBeAbsent, Exact = exact };

    /// <summary>A quantity; the unit is the one of documents and ends the key.</summary>
    public static Figure<TRow> Quantity(string key, Func<TRow, IQuantity?> value, Enum unit, string explanation, bool canBeAbsent = false)
        => new(key, FigureKind.Number, value, explanation) { CanBeAbsent = canBeAbsent, Unit = unit };

    /// <summary>An instant.</summary>
    public static Figure<TRow> Time(string key, Func<TRow, DateTimeOffset?> value, string explanation, bool canBeAbsent = false)
        => new(key, FigureKind.Time, row => value(row), explanation) { CanBeAbsent = canBeAbsent };

    /// <summary>A calendar day.</summary>
    public static Figure<TRow> Day(string key, Func<TRow, DateOnly?> value, string explanation, bool canBeAbsent = false)
        => new(key, FigureKind.Date, row => value(row), explanation) { CanBeAbsent = canBeAbsent };

    /// <summary>Texts in a row.</summary>
    public static Figure<TRow> Texts(string key, Func<TRow, IReadOnlyList<string>> value, string explanation) => new(key, FigureKind.Texts, value, explanation);

    /// <summary>Numbers in a row.</summary>
    public static Figure<TRow> Numbers(string key, Func<TRow, IEnumerable<double>> value, string explanation)
        => new(key, FigureKind.Numbers, row => value(row).ToArray(), explanation);

    /// <summary>Quantities of one unit in a row, such as one of each cylinder.</summary>
    public static Figure<TRow> Quantities(string key, Func<TRow, IEnumerable<IQuantity>> value, Enum unit, string explanation)
        => new(key, FigureKind.Numbers, row => value(row).ToArray(), explanation) { Unit = unit };

    /// <summary>A row of figures within the row.</summary>
    public static Figure<TRow> Group<TPart>(string key, Func<TRow, TPart?> value, IReadOnlyList<Figure<TPart>> parts, string explanation, bool canBeAbsent = false)
        where TPart : class
    {
        Figure<TRow> group = new(key, FigureKind.Group, row => value(row) is { } part ? new FigureRow<TPart>(parts, part) : null, explanation)
        {
            CanBeAbsent = canBeAbsent,
            Parts = parts,
        };
        return new(group, group._value, [.. parts.Select(p => p.From(value))]);
    }

    /// <summary>Rows of figures within the row.</summary>
    public static Figure<TRow> Rows<TPart>(string key, Func<TRow, IEnumerable<TPart>> value, IReadOnlyList<Figure<TPart>> parts, string explanation)
        => new(key, FigureKind.Rows, row => value(row).Select(part => new FigureRow<TPart>(parts, part)).ToArray(), explanation) { Parts = parts };

    /// <summary>The same figure of a row that holds this one's row; absent where it does not.</summary>
    public Figure<TOuter> From<TOuter>(Func<TOuter, TRow?> inner)
    {
        Figure<TOuter> outer = new(Key, Kind, Through(inner, _value), Explanation)
        {
            CanBeAbsent = CanBeAbsent,
            InDocuments = InDocuments,
            Unit = Unit,
            Exact = Exact,
            Parts = Parts,
            Csv = [.. Csv.Select(c => new CsvColumn<TOuter>(c.File, c.Heading, c.Unit, c.Digits, c.Order, Through(inner, c.Value), c.Names, c.Shown))],
            Columns = [.. Columns.Select(c => c.From(inner, Through(inner, c.Value)))],
        };
        return _projected.Count == 0 ? outer : new(outer, outer._value, [.. _projected.Select(p => p.From(inner))]);
    }

    /// <summary>Adds a column in a CSV file; its unit follows the heading in brackets.</summary>
    /// <param name="file">The file that gets the column.</param>
    /// <param name="heading">The heading without unit; <c>{name}</c> is the name of each where there is one column for each.</param>
    /// <param name="digits">Decimals.</param>
    /// <param name="unit">The unit; the document's unless given.</param>
    /// <param name="value">What the cell shows, where that is not the figure's own value.</param>
    /// <param name="names">For a list: whose values they are, one column each.</param>
    /// <param name="shown">Whether the column is there at all.</param>
    /// <param name="order">The column's position among the others; columns with the same number keep the order of the list.</param>
    public Figure<TRow> InCsv(
        CsvTable file, string heading, int digits = 0, Enum? unit = null, Func<TRow, object?>? value = null,
        Func<FigureContext, IReadOnlyList<string>>? names = null, Func<FigureContext, bool>? shown = null, int order = 0)
        => new(this, _value, _projected) { Csv = [.. Csv, new CsvColumn<TRow>(file, heading, unit ?? Unit, digits, order, value ?? _value, names, shown)] };

    /// <summary>Adds a column in a table of text or screen.</summary>
    /// <param name="table">The table that gets the column.</param>
    /// <param name="heading">Its lines, with | between; <c>{unit}</c>, <c>{dawn}</c>, <c>{currency}</c> and <c>{name}</c> are filled in.</param>
    /// <param name="display">How the value is shown.</param>
    /// <param name="left">Whether cells are set to the left.</param>
    /// <param name="value">What the cell shows, where that is not the figure's own value.</param>
    /// <param name="names">For a list: whose values they are, one column each.</param>
    /// <param name="shown">Whether the column is there, by the rows.</param>
    /// <param name="order">The column's position among the others; columns with the same number keep the order of the list.</param>
    public Figure<TRow> InTable(
        ReportTable table, string heading, Display display = Display.Usual, bool left = false, Func<TRow, object?>? value = null,
        Func<FigureContext, IReadOnlyList<string>>? names = null, Func<IReadOnlyList<TRow>, bool>? shown = null, int order = 0)
        => new(this, _value, _projected)
        {
            Columns = [.. Columns, new FigureColumn<TRow>(table, heading, value ?? _value) { Display = display, Left = left, Unit = Unit, Names = names, Shown = shown, Order = order }],
        };

    /// <summary>The same figure in tables and CSV alone, where a document has it beside the rows.</summary>
    public Figure<TRow> OutsideDocuments() => new(this, _value, _projected) { InDocuments = false };

    /// <summary>Adds the column that was added last to another table too.</summary>
    /// <param name="table">The table that gets the column.</param>
    /// <param name="display">How the value is shown there; the same way where null.</param>
    public Figure<TRow> AlsoIn(ReportTable table, Display? display = null)
        => new(this, _value, _projected) { Columns = [.. Columns, Columns[^1].In(table, display)] };

    private static Func<TOuter, object?> Through<TOuter>(Func<TOuter, TRow?> inner, Func<TRow, object?> value) => outer => inner(outer) is { } row ? value(row) : null;
}
