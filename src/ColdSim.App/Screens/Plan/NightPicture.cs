using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Night;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>The picture of one night: inside and outside, and what can be given against what is asked for; of a try, as it is beside as tried.</summary>
internal static class NightPicture
{
    private const int LeastRows = 3, FewRows = 5;

    /// <summary>Draws it.</summary>
    /// <param name="width">Its columns.</param>
    /// <param name="height">Its rows, with that of the clock.</param>
    /// <param name="view">The night and the cursor of the run that is shown.</param>
    /// <param name="asItIs">The run without what is tried; null where nothing is tried.</param>
    public static Sheet Draw(int width, int height, NightView view, RunReport? asItIs)
    {
        Sheet sheet = new(width, height);
        IReadOnlyList<Strip> strips = asItIs is null ? Alone(view) : Beside(view, asItIs);
        int room = height - 1, count = Math.Clamp(room / FewRows, 1, strips.Count);
        if (room < LeastRows)
            return sheet;
        PlotArea plot = PlotArea.Across(width);
        for (int i = 0, top = 0; i < count; i++)
        {
            int rows = room / count + (i < room % count ? 1 : 0);
            StripDrawing.Draw(sheet, plot, top, rows, strips[i], view.Span, view.Minute);
            top += rows;
        }

        TimeAxis.DrawHours(sheet, plot, room, view.Span, view.Minute, view.Report.Scenario.Start);
        return sheet;
    }

    /// <summary>The minute that a click on the picture means; null beside its curves.</summary>
    public static int? MinuteAt(int x, int width, NightView view)
    {
        PlotArea plot = PlotArea.Across(width);
        return x >= plot.Left && x < plot.Right ? view.Span.MinuteOf(x - plot.Left, plot.Columns) : null;
    }

    // Air, then gas: the strips of the nights without the cylinder's own.
    private static IReadOnlyList<Strip> Alone(NightView view) => [view.Strips[0], view.Strips[2], view.Strips[3]];

    private static IReadOnlyList<Strip> Beside(NightView view, RunReport asItIs)
    {
        UnitStyle units = view.Units;
        RunSeries tried = view.Report.Series, was = asItIs.Series;
        List<Strip> strips = [];
        if (!double.IsNaN(tried.Inside_K[0]))
            strips.Add(Over("inside", tried.Inside_K, was.Inside_K, tried, was, units.TemperatureIn, units.TemperatureUnit, double.NaN));
        strips.Add(Over("left", tried.Propane_kg, was.Propane_kg, tried, was, units.MassIn, units.MassUnit, 0));
        strips.Add(Over("liquid", tried.Liquid_K, was.Liquid_K, tried, was, units.TemperatureIn, units.TemperatureUnit, double.NaN));
        return strips;
    }

    private static Strip Over(
        string name, double[] tried, double[] was, RunSeries triedRun, RunSeries wasRun, Func<double, double> read, string unit, double least)
    {
        double[] before = Padded(was, wasRun.Count, tried.Length);
        Extent all = Curve.Over(tried, read, 0, triedRun.Count), other = Curve.Over(before, read, 0, before.Length);
        if (!other.IsNone)
            all = all.With(other.Low).With(other.High);
        ValueAxis axis = ValueAxis.Around(double.IsNaN(least) ? all.Low : least, all.High, unit);
        return new(new("as it is", before, read, axis, Stroke.Dashes), new($"{name}", Padded(tried, triedRun.Count, tried.Length), read, axis, Stroke.Line));
    }

    // After an early end there is no value, not zero.
    private static double[] Padded(double[] samples, int count, int length)
    {
        double[] padded = new double[length];
        Array.Fill(padded, double.NaN);
        samples.AsSpan(0, Math.Min(Math.Min(count, samples.Length), length)).CopyTo(padded);
        return padded;
    }
}
