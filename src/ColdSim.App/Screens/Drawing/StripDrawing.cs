using ColdSim.App.Text;

namespace ColdSim.App.Screens.Drawing;

/// <summary>Draws one strip: brackets, axis labels, keys, end labels, curves and the time cursor.</summary>
internal static class StripDrawing
{
    public static void Draw(Sheet sheet, PlotArea plot, int top, int rows, Strip strip, MinuteRange span, int cursor)
    {
        if (rows <= 0)
            return;
        DrawFrame(sheet, plot, top, rows, strip, span);
        DotGrid first = Dots(strip.First, plot, rows, span);
        DotGrid? second = strip.Second is Curve curve ? Dots(curve, plot, rows, span) : null;
        int at = span.Column(cursor, plot.Columns);
        for (int row = 0; row < rows; row++)
        {
            for (int x = 0; x < plot.Columns; x++)
                sheet.Put(plot.Left + x, top + row, Glyph(first, second, x, row), StyleOf(second, x, row, x == at));
            if (sheet[plot.Left + at, top + row].Glyph == ' ')
                sheet.Put(plot.Left + at, top + row, '┊');
        }

        if (strip.Second is Curve over)
            Arrows(sheet, plot, top, over, span);
    }

    private static DotGrid Dots(Curve curve, PlotArea plot, int rows, MinuteRange span)
    {
        DotGrid grid = new(plot.Columns, rows);
        DrawCurve(grid, curve.Columns(span, grid.Columns), curve.Axis, curve.Stroke);
        return grid;
    }

    private static char Glyph(DotGrid first, DotGrid? second, int x, int row)
    {
        if (second is not null && second.IsSet(x, row))
            return (char)(second.Glyph(x, row) | first.Glyph(x, row));
        return first.IsSet(x, row) ? first.Glyph(x, row) : ' ';
    }

    private static CellStyle StyleOf(DotGrid? second, int x, int row, bool pointed)
        => pointed ? CellStyle.Pointer : second is not null && second.IsSet(x, row) ? CellStyle.Second : CellStyle.First;

    /// <summary>Marks where a curve runs above the strip.</summary>
    private static void Arrows(Sheet sheet, PlotArea plot, int top, Curve curve, MinuteRange span)
    {
        Extent[] cells = curve.Columns(span, plot.Columns);
        for (int x = 0; x < plot.Columns; x++)
        {
            if (cells[x].Low > curve.Axis.High && sheet[plot.Left + x, top].Glyph is ' ' or '┊')
                sheet.Put(plot.Left + x, top, '↑', CellStyle.Second);
        }
    }

    /// <summary>What is left and right of the curves. Labels get a row each and never share one.</summary>
    private static void DrawFrame(Sheet sheet, PlotArea plot, int top, int rows, Strip strip, MinuteRange span)
    {
        for (int row = 0; row < rows; row++)
        {
            sheet.Put(plot.Left - 1, top + row, row == 0 ? '┐' : row == rows - 1 ? '┘' : '│');
            sheet.Put(plot.Right, top + row, row == 0 ? '┌' : row == rows - 1 ? '└' : '│');
        }

        sheet.PutBefore(plot.Left - 1, top, strip.First.Axis.HighLabel);
        sheet.PutBefore(plot.Left - 1, top + rows - 1, strip.First.Axis.LowLabel);
        Keys(sheet, plot, top, rows, strip);
        Ends(sheet, plot, top, rows, strip, span);
    }

    /// <summary>Whether there are too few rows between the axis labels for keys and names.</summary>
    private static bool KeysAtEnds(int rows, Strip strip) => rows - 2 < (strip.HasRightAxis ? 1 : strip.Curves.Count());

    /// <summary>Keys and names between the axis labels.</summary>
    private static void Keys(Sheet sheet, PlotArea plot, int top, int rows, Strip strip)
    {
        if (KeysAtEnds(rows, strip))
            return;
        int row = 1;
        foreach (Curve curve in strip.HasRightAxis ? [strip.First] : strip.Curves.Reverse())
        {
            CellStyle style = curve == strip.First ? CellStyle.First : CellStyle.Second;
            sheet.Put(0, top + row, curve.Key, style);
            sheet.Put(curve.Key.Length + 1, top + row, curve.Name);
            row++;
        }

        if (strip.Missing.Length > 0 && row < rows - 1)
            sheet.Put(0, top + row, CellText.Cut(strip.Missing, plot.Left - 1));
    }

    /// <summary>Each name at the height where its curve ends; a right axis keeps its top and bottom row, and its curve brings its key.</summary>
    private static void Ends(Sheet sheet, PlotArea plot, int top, int rows, Strip strip, MinuteRange span)
    {
        int first = 0, last = rows - 1;
        if (strip is { HasRightAxis: true, Second: Curve second })
        {
            sheet.Put(plot.Right + 2, top, second.Axis.HighLabel);
            sheet.Put(plot.Right + 2, top + rows - 1, second.Axis.LowLabel);
            (first, last) = (1, rows - 2);
        }

        Curve[] named = [.. strip.Curves.Reverse().Where(t => !double.IsNaN(Height(t, span))).Take(Math.Max(0, last - first + 1))
            .OrderByDescending(t => Height(t, span))];
        for (int i = 0; i < named.Length; i++)
        {
            int below = named.Length - 1 - i;
            int wanted = (int)Math.Round((1 - Height(named[i], span)) * (rows - 1));
            int row = Math.Clamp(wanted, first, last - below);
            first = row + 1;
            string key = KeysAtEnds(rows, strip) || (strip.HasRightAxis && named[i] == strip.Second) ? named[i].Key + " " : "";
            sheet.Put(plot.Right + 2, top + row, key + named[i].Name, named[i] == strip.First ? CellStyle.First : CellStyle.Second);
        }
    }

    private static double Height(Curve curve, MinuteRange span)
        => (curve.End(span) - curve.Axis.Low) / (curve.Axis.High - curve.Axis.Low);

    /// <summary>Draws a curve into dots.</summary>
    internal static void DrawCurve(DotGrid grid, ReadOnlySpan<Extent> columns, ValueAxis axis, Stroke stroke)
    {
        (double Low, double High)? before = null;
        for (int c = 0; c < columns.Length; c++)
        {
            if (columns[c].IsNone)
            {
                before = null;
                continue;
            }

            (double Low, double High) now = (axis.Dot(columns[c].Low, grid.Dots), axis.Dot(columns[c].High, grid.Dots));
            if (stroke is Stroke.Speckled or Stroke.Band)
                Speckle(grid, c, now.High, stroke == Stroke.Band ? now.Low : 0);
            else if (stroke == Stroke.Line || c / 2 % 2 == 0)
                Upright(grid, c, Joined(now, before));
            before = now;
        }
    }

    /// <summary>Stretches a column to meet the one before it, so that a steep curve stays in one piece.</summary>
    private static (double Low, double High) Joined((double Low, double High) now, (double Low, double High)? before)
        => before is not (double low, double high) ? now
            : high < now.Low - 1 ? (high + 1, now.High)
            : low > now.High + 1 ? (now.Low, low - 1) : now;

    private static void Upright(DotGrid grid, int column, (double Low, double High) range)
    {
        int bottom = (int)Math.Clamp(range.Low, -1, grid.Dots);
        int top = (int)Math.Clamp(range.High, -1, grid.Dots);
        for (int dot = bottom; dot <= top; dot++)
            grid.Set(column, dot);
    }

    /// <summary>Every fourth dot down from the top, one column shifted against the next, so that no two make a line.</summary>
    private static void Speckle(DotGrid grid, int column, double high, double low)
    {
        int top = (int)Math.Clamp(high, -1, grid.Dots - 1), bottom = (int)Math.Clamp(low, 0, grid.Dots);
        for (int dot = top - column % 2 * 2; dot >= bottom && top > 0; dot -= 4)
            grid.Set(column, dot);
    }
}
