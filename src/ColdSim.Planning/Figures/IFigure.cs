namespace ColdSim.Planning.Figures;

/// <summary>A figure's declaration without its row, for pages and schemas.</summary>
public interface IFigure
{
    /// <summary>Its key in documents, with the unit at its end.</summary>
    string Key { get; }

    /// <summary>What kind of value a document has there.</summary>
    FigureKind Kind { get; }

    /// <summary>One line of explanation.</summary>
    string Explanation { get; }

    /// <summary>Whether it may be absent; documents have null there.</summary>
    bool CanBeAbsent { get; }

    /// <summary>The unit of documents; null for what has none.</summary>
    Enum? Unit { get; }

    /// <summary>Whether documents keep every digit.</summary>
    bool Exact { get; }

    /// <summary>Whether documents have it.</summary>
    bool InDocuments { get; }

    /// <summary>The figures of a group or of each of several rows; empty for others.</summary>
    IReadOnlyList<IFigure> Parts { get; }
}

/// <summary>What kind of value a document has for a figure.</summary>
public enum FigureKind
{
    Text,

    /// <summary>True or false.</summary>
    Flag,

    Number,

    /// <summary>An instant with its offset.</summary>
    Time,

    /// <summary>A calendar day.</summary>
    Date,

    /// <summary>A list of texts.</summary>
    Texts,

    /// <summary>A list of numbers.</summary>
    Numbers,

    /// <summary>A row of figures.</summary>
    Group,

    /// <summary>A list of rows of figures.</summary>
    Rows,
}

/// <summary>A figure with the value that a row has for it.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Value">Its value; null where it is absent.</param>
internal sealed record FigureValue(IFigure Figure, object? Value);

/// <summary>A row together with the figures that are reported of it.</summary>
internal interface IFigureRow
{
    /// <summary>Each figure with the row's value.</summary>
    IEnumerable<FigureValue> Values { get; }
}

/// <inheritdoc cref="IFigureRow"/>
internal sealed class FigureRow<TRow>(IReadOnlyList<Figure<TRow>> figures, TRow row) : IFigureRow
{
    /// <inheritdoc/>
    public IEnumerable<FigureValue> Values => figures.Where(f => f.InDocuments).Select(f => new FigureValue(f, f.ValueOf(row)));
}
