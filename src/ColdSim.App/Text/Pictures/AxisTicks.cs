using System.Globalization;

namespace ColdSim.App.Text.Pictures;

/// <summary>The round numbers that an axis is labelled with.</summary>
internal static class AxisTicks
{
    private const int Most = 6;

    /// <summary>Round numbers on the axis, from the lowest.</summary>
    public static IReadOnlyList<double> Of(ValueAxis axis)
    {
        double step = Step((axis.High - axis.Low) / Most);
        List<double> ticks = [];
        for (double at = Math.Ceiling(axis.Low / step - 1e-9) * step; at <= axis.High + step * 1e-9; at += step)
            ticks.Add(Math.Abs(at) < step * 1e-9 ? 0 : at);
        return ticks;
    }

    /// <summary>Such as "10,000".</summary>
    public static string Label(double value) => value.ToString("#,0.###", CultureInfo.InvariantCulture).Replace('-', '−');

    private static double Step(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough))), lead = rough / power;
        return power * (lead <= 1.0001 ? 1 : lead <= 2.0001 ? 2 : lead <= 5.0001 ? 5 : 10);
    }
}
