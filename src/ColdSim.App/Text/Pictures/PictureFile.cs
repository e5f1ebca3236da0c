using ColdSim.App.Text.Markup;
using ColdSim.Files.Disk;

namespace ColdSim.App.Text.Pictures;

/// <summary>A picture as an SVG file of its own, with its colours in it.</summary>
internal static class PictureFile
{
    private const int Width = 760, Head = 30;
    private const string Made = "<!-- Made by coldsim -->";

    /// <summary>The file, known by its first line.</summary>
    public static OutputKind Kind { get; } = new("a picture", text => text.StartsWith(Made, StringComparison.Ordinal));

    public static string Of(IPicture picture)
    {
        MarkupWriter to = new();
        int height = Head + picture.Height + 4, whole = Width + PictureFrame.Left + PictureFrame.Right;
        to.Own(Made).Line();
        to.Start("svg", "picture").With("xmlns", "http://www.w3.org/2000/svg").With("viewBox", $"{-PictureFrame.Left} {-Head} {whole} {height}")
            .With("width", whole).With("height", height).With("role", "img").With("aria-labelledby", "t d").Line();
        to.Start("title").With("id", "t").Text(picture.Title).End().Line();
        to.Start("desc").With("id", "d").Text(picture.Description).End().Line();
        to.Start("style").Own(PictureStyle.Alone).End().Line();
        to.Start("rect", "paper").With("x", -PictureFrame.Left).With("y", -Head).With("width", whole).With("height", height).Empty().Line();
        to.Start("text", "head").With("x", -PictureFrame.Left + 2).With("y", -12).Text(picture.Title).End().Line();
        picture.Draw(to, new PictureFrame(Width));
        to.End().Line();
        return to.ToString();
    }
}
