using ColdSim.App.Text.Pictures;

namespace ColdSim.App.Text.Documents;

/// <summary>A report as a reader gets it, in whatever format: sections of paragraphs, lists, tables and pictures.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Sections">Its sections, in the order in which they are read.</param>
internal sealed record ReportDocument(string Title, IReadOnlyList<DocumentSection> Sections)
{
    /// <summary>The line below the title.</summary>
    public string Setting { get; init; } = "";

    /// <summary>The last line: what it was made of, and by what.</summary>
    public required string Made { get; init; }

    /// <summary>The paper it is set for.</summary>
    public Paper Paper { get; init; }

    /// <summary>Its pictures, in order.</summary>
    public IEnumerable<IPicture> Pictures => Sections.SelectMany(s => s.Blocks).OfType<PictureBlock>().Select(b => b.Picture);
}

/// <summary>The paper that a report is printed on.</summary>
internal enum Paper
{
    /// <summary>Whatever the printer has.</summary>
    Any,

    A4,

    Letter,

    A5,
}

/// <summary>A titled part.</summary>
/// <param name="Anchor">Its name in links.</param>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">What is in it.</param>
internal sealed record DocumentSection(string Anchor, string Title, IReadOnlyList<DocumentBlock> Blocks)
{
    /// <summary>Its title where room is short.</summary>
    public string ShortTitle { get; init; } = Title;

    /// <summary>Whether it begins a page where it is printed.</summary>
    public bool StartsPage { get; init; }
}

/// <summary>A part of a section.</summary>
internal abstract record DocumentBlock;

/// <summary>What a paragraph is for.</summary>
internal enum ParagraphKind
{
    Plain,

    /// <summary>The answer itself.</summary>
    Verdict,

    /// <summary>A remark under a table or picture.</summary>
    Note,

    /// <summary>What has to be minded.</summary>
    Caution,
}

/// <summary>A paragraph.</summary>
internal sealed record ParagraphBlock(string Text, ParagraphKind Kind = ParagraphKind.Plain) : DocumentBlock;

/// <summary>Points of a list.</summary>
internal sealed record PointsBlock(IReadOnlyList<string> Points) : DocumentBlock;

/// <summary>Numbers with their labels.</summary>
internal sealed record ReadingsBlock(IReadOnlyList<Reading> Readings) : DocumentBlock;

/// <summary>A number with its label.</summary>
internal sealed record Reading(string Label, string Value);

/// <summary>A table; the first column heads its rows.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Grid">Its headings and cells.</param>
internal sealed record TableBlock(string Caption, TextGrid Grid) : DocumentBlock;

/// <summary>A picture.</summary>
internal sealed record PictureBlock(IPicture Picture) : DocumentBlock;

/// <summary>A part that is long, and may be folded away on a screen.</summary>
/// <param name="Title">What is in it.</param>
/// <param name="Blocks">The part.</param>
/// <param name="OnPaper">Whether it is printed.</param>
internal sealed record FoldedBlock(string Title, IReadOnlyList<DocumentBlock> Blocks, bool OnPaper) : DocumentBlock;
