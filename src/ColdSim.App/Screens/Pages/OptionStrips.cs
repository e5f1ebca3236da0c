using ColdSim.App.Text;

namespace ColdSim.App.Screens.Pages;

/// <summary>Two options' curves over each other: A without gaps, B dashed.</summary>
internal static class OptionStrips
{
    /// <summary>Inside, liquid and what is left, top to bottom; an axis each for both options and all nights.</summary>
    public static IReadOnlyList<Strip> Of(OptionCurves a, OptionCurves? b, UnitStyle units)
    {
        List<Strip> strips = [];
        if (a.Inside_K.Any(double.IsFinite))
            strips.Add(Over("inside", a.Inside_K, b?.Inside_K, units.TemperatureIn, units.TemperatureUnit, null));
        strips.Add(Over("liquid", a.Liquid_K, b?.Liquid_K, units.TemperatureIn, units.TemperatureUnit, null));
        strips.Add(Over("left", a.Left_kg, b?.Left_kg, units.MassIn, units.MassUnit, 0));
        return strips;
    }

    private static Strip Over(string name, double[] a, double[]? b, Func<double, double> read, string unit, double? least)
    {
        Extent all = Trace.Over(a, read, 0, a.Length);
        if (b is not null)
        {
            Extent other = Trace.Over(b, read, 0, b.Length);
            if (!other.IsNone)
                all = all.With(other.Low).With(other.High);
        }

        ValueAxis axis = ValueAxis.Around(least ?? all.Low, all.High, unit);
        return new(new($"A {name}", a, read, axis, Stroke.Line), b is null ? null : new($"B {name}", b, read, axis, Stroke.Dashes));
    }
}
