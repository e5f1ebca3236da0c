using ColdSim.App.Text.Markup;

namespace ColdSim.App.Text.Pictures;

/// <summary>A picture that can be drawn into a page or into a file of its own.</summary>
internal interface IPicture
{
    /// <summary>The name of its file without ending, and its anchor in a page.</summary>
    string Name { get; }

    /// <summary>What it shows, in a few words.</summary>
    string Title { get; }

    /// <summary>The same for somebody who does not see it.</summary>
    string Description { get; }

    /// <summary>Its height. [px]</summary>
    int Height { get; }

    /// <summary>Draws what is in it, right of 0 and left of the frame's whole width; labels may be outside.</summary>
    void Draw(MarkupWriter to, PictureFrame frame);
}

/// <summary>A point of a curve: minutes or another measure along, the person's unit upwards.</summary>
internal readonly record struct PicturePoint(double X, double Y);

/// <summary>How the width of a picture is measured: in parts of whatever width a page gives it, or in pixels of a file.</summary>
/// <param name="Width">In pixels; null for parts of a page's.</param>
internal sealed record PictureFrame(double? Width)
{
    /// <summary>Room for the labels of the left axis. [px]</summary>
    public const int Left = 46;

    /// <summary>Room for those of the right axis. [px]</summary>
    public const int Right = 40;

    /// <summary>As wide as its place in a page.</summary>
    public static PictureFrame Fluid { get; } = new((double?)null);

    /// <summary>A part of the width, as an attribute has it.</summary>
    public string Along(double part) => Width is { } width ? MarkupWriter.Number(part * width) : MarkupWriter.Number(part * 100) + "%";
}
