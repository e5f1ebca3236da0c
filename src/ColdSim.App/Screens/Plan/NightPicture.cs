using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Night;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>The picture of one night, the same as on the page of the nights; of a try, as it is dotted beside as tried.</summary>
internal static class NightPicture
{
    private const int LeastRows = 4;

    /// <summary>Draws it.</summary>
    /// <param name="width">Its columns.</param>
    /// <param name="height">Its rows, with that of the clock.</param>
    /// <param name="view">The night and the cursor of the run that is shown.</param>
    /// <param name="asItIs">The run without what is tried; null where nothing is tried.</param>
    public static Sheet Draw(int width, int height, NightView view, RunReport? asItIs)
    {
        Sheet sheet = new(width, height);
        if (height < LeastRows)
            return sheet;
        Night.NightPicture picture = asItIs is null ? view.Picture : view.Picture with { Strips = NightStrips.Of(view.Report, view.Units, asItIs) };
        picture.Draw(sheet, PlotArea.Across(width), 0, PictureLayout.For(height));
        return sheet;
    }

    /// <summary>The minute that a click on the picture means; null beside its curves.</summary>
    public static int? MinuteAt(int x, int width, NightView view)
    {
        PlotArea plot = PlotArea.Across(width);
        return x >= plot.Left && x < plot.Right ? view.Span.MinuteOf(x - plot.Left, plot.Columns) : null;
    }
}
