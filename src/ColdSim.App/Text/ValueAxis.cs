using System.Globalization;

namespace ColdSim.App.Text;

/// <summary>The upright axis of a strip, in the units a person reads, between two round numbers.</summary>
internal sealed record ValueAxis(double Low, double High, string Unit)
{
    public string LowLabel => Label(Low);

    public string HighLabel => Label(High);

    /// <summary>The round numbers around a range; NaN and endless values are not part of a range.</summary>
    public static ValueAxis Around(double low, double high, string unit)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || low > high)
            return new(0, 1, unit);
        if (high - low < 1e-6 * Math.Max(1, Math.Abs(high)))
            high = low + 1;
        double step = RoundStep((high - low) / 8);
        double bottom = Math.Floor(low / step + 1e-9) * step;
        double top = Math.Ceiling(high / step - 1e-9) * step;
        return new(bottom, top > bottom ? top : bottom + step, unit);
    }

    /// <summary>The dot of a value, counted from 0 at the bottom; below 0 or at <paramref name="dots"/> and above it is off the strip.</summary>
    public double Dot(double value, int dots) => Math.Round((value - Low) / (High - Low) * (dots - 1));

    private static double RoundStep(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double lead = rough / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }

    private string Label(double value)
        => $"{(Math.Abs(value) < 1e-9 ? 0 : value).ToString("#,0.###", CultureInfo.InvariantCulture)} {Unit}";
}
