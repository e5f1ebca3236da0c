using ColdSim.App.Text;

namespace ColdSim.App.Screens.Drawing;

/// <summary>Draws one strip: margins, ruled lines, what is filled, curves and the time cursor.</summary>
internal static class StripDrawing
{
    /// <summary>What is drawn into dots, the later over the earlier.</summary>
    private readonly record struct Layer(DotGrid Dots, CellStyle Style, char Plain);

    public static void Draw(Sheet sheet, PlotArea plot, int top, int rows, Strip strip, MinuteRange span, int? cursor)
    {
        if (rows <= 0 || plot.Columns <= 0)
            return;
        StripMargins.Draw(sheet, plot, top, rows, strip, span);
        foreach (Rule rule in strip.Rules)
            PutRule(sheet, plot, top, rows, rule, strip.First.Axis, span);
        List<Layer> layers = [];
        DotGrid? filled = null;
        if (strip.Gap is { } gap)
        {
            (DotGrid loose, filled) = GapDrawing.Dots(gap, strip.First, plot, rows, span);
            layers.Add(new(loose, CellStyle.Demand, StrokeDrawing.Plain(Stroke.Band)));
        }

        foreach (Curve curve in strip.Curves.Select(c => c.Dotted).OfType<Curve>().Concat(strip.Curves))
            layers.Add(new(Dots(curve, plot, rows, span), curve.Style, StrokeDrawing.Plain(curve.Stroke)));
        if (filled is not null)
            layers.Add(new(filled, CellStyle.Shortage, '#'));
        Put(sheet, plot, top, rows, layers);
        foreach (Rule rule in strip.Rules)
            NameRule(sheet, plot, top, rows, rule);
        foreach (Curve curve in strip.Curves)
            Arrows(sheet, plot, top, curve, span);
        if (filled is not null)
            GapDrawing.PutName(sheet, plot, top, filled, rows, strip.Gap!.Name);
        PutMeasured(sheet, plot, top, rows, strip, span);
        if (cursor is { } minute)
            PutCursor(sheet, plot, top, rows, span.Column(minute, plot.Columns));
    }

    private static DotGrid Dots(Curve curve, PlotArea plot, int rows, MinuteRange span)
    {
        DotGrid grid = new(plot.Columns, rows);
        StrokeDrawing.DrawCurve(grid, curve.Columns(span, grid.Columns), curve.Axis, curve.Stroke);
        return grid;
    }

    private static void Put(Sheet sheet, PlotArea plot, int top, int rows, List<Layer> layers)
    {
        for (int row = 0; row < rows; row++)
        {
            for (int x = 0; x < plot.Columns; x++)
            {
                int glyph = 0;
                Layer over = default;
                foreach (Layer layer in layers.Where(l => l.Dots.IsSet(x, row)))
                {
                    glyph |= layer.Dots.Glyph(x, row);
                    over = layer;
                }

                if (glyph != 0)
                    sheet.Put(plot.Left + x, top + row, (char)glyph, over.Style, over.Plain);
            }
        }
    }

    private static void PutRule(Sheet sheet, PlotArea plot, int top, int rows, Rule rule, ValueAxis axis, MinuteRange span)
    {
        for (int x = 0; x < plot.Columns; x++)
        {
            double value = rule.At(span.MinuteOf(x, plot.Columns));
            if (value >= axis.Low && value <= axis.High)
                sheet.Put(plot.Left + x, top + axis.Row(value, rows), rule.Glyph, rule.Style, rule.Plain);
        }
    }

    /// <summary>Writes a rule's name on it, at the first stretch that no curve covers.</summary>
    private static void NameRule(Sheet sheet, PlotArea plot, int top, int rows, Rule rule)
    {
        int room = rule.Name.Length + 2;
        for (int row = 0; row < rows; row++)
        {
            for (int x = 0, from = 0; x < plot.Columns; x++)
            {
                Cell cell = sheet.Contains(plot.Left + x, top + row) ? sheet[plot.Left + x, top + row] : default;
                if (cell.Glyph != rule.Glyph || cell.Style != rule.Style)
                    from = x + 1;
                else if (x + 1 - from == room + 1)
                {
                    sheet.Put(plot.Left + from + 1, top + row, $" {rule.Name} ", rule.Style);
                    return;
                }
            }
        }
    }

    /// <summary>Marks where a curve runs above the strip.</summary>
    private static void Arrows(Sheet sheet, PlotArea plot, int top, Curve curve, MinuteRange span)
    {
        Extent[] cells = curve.Columns(span, plot.Columns);
        for (int x = 0; x < plot.Columns; x++)
        {
            if (cells[x].Low > curve.Axis.High && sheet.IsBlank(plot.Left + x, top))
                sheet.Put(plot.Left + x, top, '↑', curve.Style);
        }
    }

    private static void PutMeasured(Sheet sheet, PlotArea plot, int top, int rows, Strip strip, MinuteRange span)
    {
        foreach (MeasuredMark mark in strip.Measured.Where(m => m.Minute >= span.From && m.Minute < span.To))
        {
            int row = Math.Clamp(strip.First.Axis.Row(mark.Value, rows), 0, rows - 1);
            sheet.Put(plot.Left + span.Column(mark.Minute, plot.Columns), top + row, MeasuredMark.Glyph, CellStyle.Strong, MeasuredMark.Plain);
        }
    }

    private static void PutCursor(Sheet sheet, PlotArea plot, int top, int rows, int at)
    {
        for (int row = 0; row < rows; row++)
        {
            int x = plot.Left + at, y = top + row;
            if (sheet.IsBlank(x, y))
                sheet.Put(x, y, '┊');
            else if (sheet.Contains(x, y))
                sheet.Put(x, y, sheet[x, y].Glyph, CellStyle.Pointer, sheet[x, y].Plain);
        }
    }
}
