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

    // The strips of air and gas are always shown.
    private const int LeastBesideCylinders = 4;

    /// <summary>How strips share the room, and which of them go first when there is too little.</summary>
    private static readonly int[] Weights = [4, 3, 4, 2];
    private static readonly int[] Least = [2, 3, 2, 2];
    private static readonly int[] FirstToGo = [3, 1, 0, 2];

    public required bool Fits { get; init; }

    /// <summary>Whether the readout is on the right and not below.</summary>
    public bool ReadoutBeside { get; init; }

    public PlotArea Plot { get; init; }

    /// <summary>Rows of each strip; 0 where it is left out.</summary>
    public IReadOnlyList<int> StripRows { get; init; } = [];

    public bool ShowsBurner { get; init; }

    /// <summary>Rows below the readout with a cylinder each; fewer than there are where room is short.</summary>
    public int CylinderRows { get; init; }

    public bool ShowsLegend { get; init; }

    /// <summary>Values in a row below the curves.</summary>
    public int ReadoutColumns { get; init; }

    public int AfterStrips => FirstStrip + StripRows.Sum();

    public int BurnerRow => AfterStrips;

    public int EventRow => AfterStrips + (ShowsBurner ? 1 : 0);

    public int ClockRow => EventRow + 1;

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
        int room = height - FirstStrip - Footer - 2 - readout;
        int each = side ? 0 : Math.Clamp(room - LeastBesideCylinders, 0, cylinders);
        room -= each;
        bool burner = room >= 10, legend = !side && room >= 12;
        int readoutWidth = side ? ReadoutWidth : 0;
        return new()
        {
            Fits = true,
            ReadoutBeside = side,
            Plot = PlotArea.Across(width - readoutWidth),
            StripRows = Share(room - (burner ? 1 : 0) - (legend ? 1 : 0)),
            ShowsBurner = burner,
            CylinderRows = each,
            ShowsLegend = legend,
            ReadoutColumns = across,
        };
    }

    /// <summary>As many rows as its labels need at least, or none; the rest by weight.</summary>
    private static int[] Share(int room)
    {
        int[] rows = [.. Least];
        foreach (int gone in FirstToGo.TakeWhile(_ => rows.Sum() > room))
            rows[gone] = 0;
        while (rows.Sum() < room)
        {
            int next = Enumerable.Range(0, rows.Length).Where(i => rows[i] > 0).MinBy(i => (double)rows[i] / Weights[i]);
            rows[next]++;
        }

        return rows;
    }
}
