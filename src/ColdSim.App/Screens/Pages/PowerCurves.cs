using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>A night of the 12 V side over its hours: charge, and what is drawn and comes in, with the pointer where charge is lowest.</summary>
internal static class PowerCurves
{
    // A blank row, a strip and the clock.
    private const int LeastRows = LeastStrip + 2;

    private const int LeastStrip = 4;
    private const int MostStrip = 9;
    private const int LeastColumns = 12;

    /// <summary>Draws what there is room for: charge alone, or both.</summary>
    /// <param name="sheet">To draw on.</param>
    /// <param name="report">The run.</param>
    /// <param name="night">Index of the night.</param>
    /// <param name="top">First row, which stays blank.</param>
    /// <param name="rows">How many rows there are.</param>
    public static void Draw(Sheet sheet, RunReport report, int night, int top, int rows)
    {
        Place place = new(Place.LeftMargin, sheet.Width - Place.LeftMargin - Place.RightMargin);
        if (rows < LeastRows || place.Columns < LeastColumns || report.Series.Power is not { } power) return;
        NightSpan span = NightSpan.Of(report, night);
        int lowest = span.Clamp(NightSpan.MinuteAt(report, report.Nights[night].Power!.ChargeLowAt));
        int strips = rows - 2 >= 2 * LeastStrip ? 2 : 1;
        int each = Math.Min(MostStrip, (rows - 2) / strips);
        int y = top + 1;
        foreach (Strip strip in Strips(report.Series, power).Take(strips))
        {
            StripDrawing.Draw(sheet, place, y, each, strip, span, lowest);
            y += each;
        }

        TimeRows.Clock(sheet, place, y, span, lowest, report.Scenario.Start);
    }

    // Axes hold for all nights, so that nights compare at a glance.
    private static IEnumerable<Strip> Strips(RunSeries series, PowerSeries power)
    {
        yield return new(new("charge", power.Charge_frac, f => f * 100, new ValueAxis(0, 100, "%"), Stroke.Line));
        double[] given_W = power.Given_W();
        double most_W = Math.Max(Trace.Over(power.Drawn_W, w => w, 0, series.Count).High, Trace.Over(given_W, w => w, 0, series.Count).High);
        ValueAxis axis = ValueAxis.Around(0, most_W, "W");
        yield return new(new("drawn", power.Drawn_W, w => w, axis, Stroke.Speckled), new("comes in", given_W, w => w, axis, Stroke.Line));
    }
}
