using System.Globalization;

namespace ColdSim.App.Text;

/// <summary>The upright axis of a picture, in the units a person reads, between two round numbers.</summary>
internal sealed record ValueAxis(double Low, double High, string Unit)
{
    /// <summary>The most ticks of an axis; with more, numbers are read no faster.</summary>
    public const int MostTicks = 7;

    private const double Hairline = 1e-9;

    public string LowLabel => $"{Number(Low)} {Unit}";

    public string HighLabel => $"{Number(High)} {Unit}";

    /// <summary>The round numbers around a range; NaN and endless values are not part of a range.</summary>
    public static ValueAxis Around(double low, double high, string unit)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || low > high)
            return new(0, 1, unit);
        if (high - low < 1e-6 * Math.Max(1, Math.Abs(high)))
            high = low + 1;
        double step = RoundStep((high - low) / 8);
        double bottom = Math.Floor(low / step + Hairline) * step;
        double top = Math.Ceiling(high / step - Hairline) * step;
        return new(bottom, top > bottom ? top : bottom + step, unit);
    }

    /// <summary>The dot of a value, from 0 at the bottom; below 0 or at <paramref name="dots"/> and above it is off the strip.</summary>
    public double Dot(double value, int dots) => Math.Round((value - Low) / (High - Low) * (dots - 1));

    /// <summary>The row of a value, counted from 0 at the top; off the strip where it is outside the axis.</summary>
    public int Row(double value, int rows) => rows - 1 - (int)Math.Floor(Dot(value, rows * 4) / 4);

    /// <summary>Round numbers on the axis, rising: multiples of 1, 2 or 5 and a power of ten, at least two of them.</summary>
    /// <param name="most">No more than so many, and never more than <see cref="MostTicks"/>.</param>
    public IReadOnlyList<double> Ticks(int most)
    {
        most = Math.Clamp(most, 2, MostTicks);
        double step = RoundStep((High - Low) / (2 * MostTicks));
        while (true)
        {
            double first = Math.Ceiling(Low / step - Hairline), last = Math.Floor(High / step + Hairline);
            if (last - first + 1 < 2)
                return [Low, High];
            if (last - first + 1 <= most)
                return [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => (first + i) * step)];
            step = RoundStep(step * 1.5);
        }
    }

    /// <summary>A value without its unit.</summary>
    public static string Number(double value) => (Math.Abs(value) < Hairline ? 0 : value).ToString("#,0.###", CultureInfo.InvariantCulture);

    /// <summary>The same with the minus sign of print, as a picture has it.</summary>
    public static string Label(double value) => Number(value).Replace('-', '−');

    private static double RoundStep(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double lead = rough / power;
        return power * (lead <= 1 + Hairline ? 1 : lead <= 2 + Hairline ? 2 : lead <= 5 + Hairline ? 5 : 10);
    }
}
