using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Model.Engine;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>The three curves of a run by which options are compared; nothing else of the run is kept.</summary>
/// <param name="Order">Which option: 0 for the base.</param>
/// <param name="Inside_K">Inside air. [K]</param>
/// <param name="Liquid_K">Liquid of the cylinder in use. [K]</param>
/// <param name="Left_kg">Propane in all cylinders. [kg]</param>
internal sealed record OptionCurves(int Order, double[] Inside_K, double[] Liquid_K, double[] Left_kg)
{
    public static OptionCurves Of(int order, RunReport report)
    {
        RunSeries s = report.Series;
        return new(order, Run(s.Inside_K, s.Count), Run(s.Liquid_K, s.Count), Run(s.Propane_kg, s.Count));
    }

    /// <summary>The curves padded to the length of a longer run.</summary>
    public OptionCurves Of(int samples)
        => samples <= Left_kg.Length ? this : new(Order, Longer(Inside_K, samples), Longer(Liquid_K, samples), Longer(Left_kg, samples));

    // After an early end there is no value, not zero.
    private static double[] Run(double[] samples, int count)
    {
        double[] run = [.. samples];
        run.AsSpan(Math.Min(count, run.Length)..).Fill(double.NaN);
        return run;
    }

    private static double[] Longer(double[] samples, int count)
    {
        double[] longer = new double[count];
        Array.Fill(longer, double.NaN);
        samples.CopyTo(longer, 0);
        return longer;
    }

    /// <summary>Two options' curves over each other, A without gaps and B dashed: inside, liquid and what is left, top to bottom; an axis each for both options and all nights.</summary>
    public static IReadOnlyList<Strip> Strips(OptionCurves a, OptionCurves? b, UnitStyle units)
    {
        List<Strip> strips = [];
        if (a.Inside_K.Any(double.IsFinite))
            strips.Add(Over("inside", a.Inside_K, b?.Inside_K, units.TemperatureIn, units.TemperatureUnit, null, CellStyle.Inside));
        strips.Add(Over("liquid", a.Liquid_K, b?.Liquid_K, units.TemperatureIn, units.TemperatureUnit, null, CellStyle.Liquid));
        strips.Add(Over("left", a.Left_kg, b?.Left_kg, units.MassIn, units.MassUnit, 0, CellStyle.GasLeft));
        return strips;
    }

    private static Strip Over(string name, double[] a, double[]? b, Func<double, double> read, string unit, double? least, CellStyle style)
    {
        Extent all = Curve.Over(a, read, 0, a.Length);
        if (b is not null)
            all = all.With(Curve.Over(b, read, 0, b.Length));
        ValueAxis axis = ValueAxis.Around(least ?? all.Low, all.High, unit);
        return new(new($"A {name}", a, read, axis, Stroke.Line, style), b is null ? null : new($"B {name}", b, read, axis, Stroke.Dashes, style));
    }
}
