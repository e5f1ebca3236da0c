using ColdSim.App.Text;

namespace ColdSim.App.Screens.Drawing;

/// <summary>Fills the gap between demand and supply: loosely where more is asked for than can be kept up, wholly where gas is short.</summary>
internal static class GapDrawing
{
    // The name with a blank and a filled cell on each side of it.
    private const int AroundName = 4;

    /// <summary>The dots of both fillings.</summary>
    public static (DotGrid Loose, DotGrid Short) Dots(Gap gap, Curve curve, PlotArea plot, int rows, MinuteRange span)
    {
        DotGrid loose = new(plot.Columns, rows), whole = new(plot.Columns, rows);
        for (int c = 0; c < loose.Columns; c++)
        {
            MinuteRange part = span.Part(c, loose.Columns);
            bool isShort = false;
            for (int m = part.From; m < part.To; m++)
                isShort |= gap.IsShort(m);
            double upper = curve.Read(part.Mean(gap.Upper)), lower = curve.Read(part.Mean(gap.Lower));
            if (isShort)
                lower = Math.Min(lower, curve.Read(part.Mean(gap.Given)));
            if (!(upper > lower))
                continue;
            (double Low, double High) dots = (curve.Axis.Dot(lower, loose.Dots), curve.Axis.Dot(upper, loose.Dots));
            if (isShort)
                StrokeDrawing.Upright(whole, c, dots);
            else
                StrokeDrawing.Speckle(loose, c, dots.High, dots.Low);
        }

        return (loose, whole);
    }

    /// <summary>Writes the name into the widest row of a shortage, where it fits.</summary>
    public static void PutName(Sheet sheet, PlotArea plot, int top, DotGrid filled, int rows, string name)
    {
        (int Row, int From, int Length) best = default;
        for (int row = 0; row < rows; row++)
        {
            for (int x = 0, from = 0; x <= plot.Columns; x++)
            {
                if (x < plot.Columns && filled.IsSet(x, row))
                    continue;
                if (x - from > best.Length)
                    best = (row, from, x - from);
                from = x + 1;
            }
        }

        if (best.Length >= name.Length + AroundName)
            sheet.Put(plot.Left + best.From + (best.Length - name.Length) / 2 - 1, top + best.Row, $" {name} ", CellStyle.Strong);
    }
}
