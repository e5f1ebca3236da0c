using ColdSim.App.Text;

namespace ColdSim.App.Screens.Pages;

/// <summary>A line of a page of text.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Heading">Whether a part begins with it.</param>
internal readonly record struct TextLine(string Text, bool Heading = false)
{
    /// <summary>Sections one below the other, a blank line between.</summary>
    public static IReadOnlyList<TextLine> Of(IEnumerable<TextSection> sections) =>
    [
        .. sections.SelectMany((s, i) => (IEnumerable<TextLine>)
            [.. i == 0 ? Array.Empty<TextLine>() : [new TextLine("")], new(s.Title, true), .. s.Lines.Select(l => new TextLine(l))]),
    ];
}
