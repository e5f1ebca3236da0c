using ColdSim.App.Text;

namespace ColdSim.App.Screens.Drawing;

/// <summary>Draws what is left and right of a strip's curves: the axis with its ticks, and each curve's name where it ends.</summary>
internal static class StripMargins
{
    // With fewer columns a name stands without its key.
    private const int KeyedColumns = 30;
    private const string AsItIs = "as it is";

    public static void Draw(Sheet sheet, PlotArea plot, int top, int rows, Strip strip, MinuteRange span)
    {
        LeftAxis(sheet, plot, top, rows, strip.First.Axis);
        Names(sheet, plot, top, rows, strip, span);
    }

    /// <summary>The most ticks that a strip has room for, a row free between two where it is high enough for three.</summary>
    private static int MostTicks(int rows) => rows <= 3 ? 2 : (rows + 1) / 2;

    private static void LeftAxis(Sheet sheet, PlotArea plot, int top, int rows, ValueAxis axis)
    {
        for (int row = 0; row < rows; row++)
            sheet.Put(plot.Left - 1, top + row, '│');
        HashSet<int> taken = [];
        IReadOnlyList<double> ticks = axis.Ticks(MostTicks(rows));
        for (int i = ticks.Count - 1; i >= 0; i--)
        {
            int row = axis.Row(ticks[i], rows);
            if (!taken.Add(row))
                continue;
            string number = ValueAxis.Number(ticks[i]), whole = $"{number} {axis.Unit}";
            bool fits = i == ticks.Count - 1 && whole.Length < plot.Left;
            sheet.Put(plot.Left - 1, top + row, '┤');
            sheet.PutBefore(plot.Left - 1, top + row, fits ? whole : number);
            if (i == ticks.Count - 1 && !fits)
                taken.Add(-1);
        }

        int free = taken.Contains(-1) ? Enumerable.Range(0, rows).FirstOrDefault(r => !taken.Contains(r), -1) : -1;
        if (free >= 0)
            sheet.PutBefore(plot.Left - 1, top + free, axis.Unit);
    }

    /// <summary>Each name at the height where its curve ends, in rows of their own.</summary>
    private static void Names(Sheet sheet, PlotArea plot, int top, int rows, Strip strip, MinuteRange span)
    {
        Curve[] named = [.. strip.Curves.Reverse().Where(c => !double.IsNaN(c.End(span))).Take(rows).OrderByDescending(c => Height(c, span))];
        int first = 0;
        HashSet<int> used = [];
        for (int i = 0; i < named.Length; i++)
        {
            int wanted = (int)Math.Round((1 - Height(named[i], span)) * (rows - 1));
            int row = Math.Clamp(wanted, first, rows - named.Length + i);
            first = row + 1;
            used.Add(row);
            PutName(sheet, plot, top + row, named[i].Name, named[i].Stroke, named[i].Style);
        }

        int spare = Enumerable.Range(0, rows).FirstOrDefault(r => !used.Contains(r), -1);
        if (spare < 0)
            return;
        if (strip.Measured.Any(m => m.Minute >= span.From && m.Minute < span.To))
        {
            sheet.Put(plot.Right + 1, top + spare, MeasuredMark.Glyph, CellStyle.Strong, MeasuredMark.Plain);
            sheet.Put(plot.Right + 3, top + spare, MeasuredMark.Name);
            used.Add(spare);
            spare = Enumerable.Range(0, rows).FirstOrDefault(r => !used.Contains(r), -1);
            if (spare < 0)
                return;
        }

        if (strip.Curves.Any(c => c.AsItIs is not null))
            PutName(sheet, plot, top + spare, AsItIs, Stroke.Dots, CellStyle.Plain);
        else if (strip.Missing.Length > 0)
            sheet.Put(plot.Right + 1, top + spare, strip.Missing);
    }

    private static void PutName(Sheet sheet, PlotArea plot, int y, string name, Stroke stroke, CellStyle style)
    {
        int x = plot.Right + 1;
        if (plot.Columns >= KeyedColumns)
        {
            foreach (char cell in StrokeDrawing.Key(stroke))
                sheet.Put(x++, y, cell, style, cell == ' ' ? ' ' : StrokeDrawing.Plain(stroke));
            x++;
        }

        sheet.Put(x, y, name, style);
    }

    private static double Height(Curve curve, MinuteRange span)
        => Math.Clamp((curve.End(span) - curve.Axis.Low) / (curve.Axis.High - curve.Axis.Low), 0, 1);
}
