using ColdSim.App.Screens.Drawing;

namespace ColdSim.App.Screens.Night;

/// <summary>The row and column of everything on the page of the nights, for a width and a height.</summary>
internal sealed record NightLayout
{
    public const int ReadoutWidth = 34;

    /// <summary>Below the two rows of the header.</summary>
    public const int FirstStrip = 2;
    private const int Footer = 1;
    private const int WideReadout = 80;

    // The strips of gas and air, words for events and the clock are always shown.
    private const int LeastPicture = 6;

    public required bool Fits { get; init; }

    /// <summary>Whether the readout is on the right and not below.</summary>
    public bool ReadoutBeside { get; init; }

    public PlotArea Plot { get; init; }

    /// <summary>The rows of the picture.</summary>
    public PictureLayout Picture { get; init; } = PictureLayout.For(0);

    /// <summary>Rows below the readout with a cylinder each; fewer than there are where room is short.</summary>
    public int CylinderRows { get; init; }

    /// <summary>Values in a row below the curves.</summary>
    public int ReadoutColumns { get; init; }

    public int ClockRow => FirstStrip + Picture.ClockRow;

    public int ReadoutRow => ClockRow + 1;

    /// <param name="width">Columns of the page.</param>
    /// <param name="height">Its rows.</param>
    /// <param name="cylinders">How many cylinders want a row of their own.</param>
    public static NightLayout For(int width, int height, int cylinders = 0)
    {
        if (width < Sheet.MinWidth || height < Sheet.MinHeight)
            return new() { Fits = false };
        bool side = width >= 116 && height >= 34;
        int across = width >= WideReadout ? 4 : 2;
        int readout = side ? 0 : 1 + 12 / across;
        int room = height - FirstStrip - Footer - readout;
        int each = side ? 0 : Math.Clamp(room - LeastPicture, 0, cylinders);
        return new()
        {
            Fits = true,
            ReadoutBeside = side,
            Plot = PlotArea.Across(width - (side ? ReadoutWidth : 0)),
            Picture = PictureLayout.For(room - each),
            CylinderRows = each,
            ReadoutColumns = across,
        };
    }
}
