using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Screens.Pages;

/// <summary>The limits as a strip: fill along, the night's low upwards, a curve and its marks a set-up, dashed with a blanket.</summary>
internal static class LimitStrip
{
    /// <summary>Rows of the picture with the lines above and below it.</summary>
    public const int Rows = Top + PlotRows + 2;

    private const int Top = 1;
    private const int PlotRows = 14;

    // For a key, a mark and "one more and blankets".
    private const int NameMargin = 29;
    private const char Several = '@';

    // Samples of a curve from an empty cylinder to a full one.
    private const int Samples = 1001;

    public static Sheet Draw(LimitChart chart, UnitStyle units, int width)
    {
        Sheet sheet = new(width, Rows);
        PlotArea plot = PlotArea.Across(width, NameMargin);
        sheet.Put(0, 0, CellText.Cut($"The night's low, {units.TemperatureUnit}: fed at a mark and above it, short below it", width));
        if (plot.Columns <= 0)
            return sheet;
        ValueAxis axis = LimitScale.Axis(chart, units);
        MinuteRange span = new(0, Samples);
        Curve[] curves = [.. chart.Columns.Select(c => CurveOf(c, chart, units, axis))];
        StripDrawing.Draw(sheet, plot, Top, PlotRows, new(curves[0]) { More = curves[1..] }, span, cursor: null);
        bool several = false;
        foreach (LimitColumn column in chart.Columns)
        {
            char mark = LimitWords.Mark(column.RigVariant.Kind);
            foreach (LimitCell cell in LimitScale.Found(column.Cells))
            {
                int x = plot.Left + span.Column(Sample(cell), plot.Columns), y = Top + axis.Row(units.TemperatureIn(cell.Low_K), PlotRows);
                bool isFree = sheet[x, y].Glyph is ' ' or >= '\u2800';
                several |= !isFree;
                sheet.Put(x, y, isFree ? mark : Several, CellStyle.Strong);
            }
        }

        Fills(sheet, plot, span);
        sheet.Put(plot.Left, Rows - 1, CellText.Cut(
            "fill of each cylinder, % of its legal filling" + (several ? $"   {Several} several of these" : ""), width - plot.Left));
        return sheet;
    }

    /// <summary>A set-up's lows, straight between its fills.</summary>
    private static Curve CurveOf(LimitColumn column, LimitChart chart, UnitStyle units, ValueAxis axis)
    {
        double[] lows = new double[Samples];
        Array.Fill(lows, double.NaN);
        LimitCell[] cells = [.. LimitScale.Found(column.Cells)];
        for (int i = 0; i < cells.Length; i++)
        {
            LimitCell cell = cells[i], before = cells[Math.Max(0, i - 1)];
            int from = Sample(before), to = Sample(cell);
            for (int s = from; s <= to; s++)
                lows[s] = to == from ? cell.Low_K : before.Low_K + (cell.Low_K - before.Low_K) * (s - from) / (to - from);
        }

        RigVariantKind kind = column.RigVariant.Kind;
        string name = $"{LimitWords.Mark(kind)} {string.Join(' ', LimitWords.Heading(kind, chart.Scenario.Rig))}";
        Stroke stroke = kind.HasFlag(RigVariantKind.Blanket) ? Stroke.Dashes : Stroke.Line;
        return new(name, lows, units.TemperatureIn, axis, stroke, CellStyle.Outside);
    }

    private static int Sample(LimitCell cell) => (int)Math.Round(cell.Fill_frac * (Samples - 1));

    private static void Fills(Sheet sheet, PlotArea plot, MinuteRange span)
    {
        sheet.PutBefore(plot.Left - 1, Top + PlotRows, "fill");
        for (int percent = 0; percent <= 100; percent += 20)
        {
            string number = UnitStyle.Number(percent, 0);
            int at = plot.Left + span.Column(percent * (Samples - 1) / 100, plot.Columns);
            sheet.Put(Math.Max(plot.Left, at - number.Length / 2), Top + PlotRows, number);
        }
    }
}
