using ColdSim.Planning.Limits;

namespace ColdSim.App.Text;

/// <summary>What a picture of the limits draws and on which axis, the same on the screen as in the report.</summary>
internal static class LimitScale
{
    // Degrees of the person's unit between the outermost marks and the ends of the axis, before those are rounded.
    private const double Around = 2;

    /// <summary>Those with a low in which they hold.</summary>
    public static IEnumerable<LimitCell> Found(IEnumerable<LimitCell> cells) => cells.Where(c => c.Kind != LimitKind.NotAtWarmest);

    /// <summary>The axis of the lows.</summary>
    public static ValueAxis Axis(LimitChart chart, UnitStyle units)
    {
        double[] lows = [.. Found(chart.Cells).Select(c => units.TemperatureIn(c.Low_K))];
        return lows.Length == 0
            ? ValueAxis.Around(units.TemperatureIn(chart.Axis.Coldest_K), units.TemperatureIn(chart.Axis.Warmest_K), units.TemperatureUnit)
            : ValueAxis.Around(lows.Min() - Around, lows.Max() + Around, units.TemperatureUnit);
    }
}
