using ColdSim.App.Text;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Forecasts;

namespace ColdSim.App.Screens.Pages;

/// <summary>How the members lie apart over the run: the middle one as a line, eight in ten as a band of speckles.</summary>
internal static class ChanceStrips
{
    /// <summary>Propane left, and inside air where the run has a coach.</summary>
    public static IReadOnlyList<Strip> Of(IReadOnlyList<FanPoint> fan, int samples, UnitStyle units)
    {
        List<Strip> strips = [Over("left", fan, p => p.Left_kg, samples, units.MassIn, units.MassUnit, 0)];
        if (fan.Any(p => p.Inside_K is not null))
            strips.Add(Over("inside", fan, p => p.Inside_K, samples, units.TemperatureIn, units.TemperatureUnit, null));
        return strips;
    }

    private static Strip Over(
        string name, IReadOnlyList<FanPoint> fan, Func<FanPoint, Spread<double>?> of, int samples, Func<double, double> read, string unit, double? least)
    {
        double[] low = FanCurve.Of(fan, p => of(p)?.Low, samples), high = FanCurve.Of(fan, p => of(p)?.High, samples);
        Extent all = Trace.Over(low, read, 0, samples), top = Trace.Over(high, read, 0, samples);
        ValueAxis axis = ValueAxis.Around(least ?? all.Low, top.High, unit);
        return new(
            new("8 in 10", high, read, axis, Stroke.Band) { Lower = low },
            new(name, FanCurve.Of(fan, p => of(p)?.Median, samples), read, axis, Stroke.Line));
    }
}
