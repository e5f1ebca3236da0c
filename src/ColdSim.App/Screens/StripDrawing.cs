namespace ColdSim.App.Screens;

/// <summary>Draws one strip: brackets, axis labels, keys, end labels, curves and the time cursor.</summary>
internal static class StripDrawing
{
    public static void Draw(Sheet sheet, Place place, int top, int rows, Strip strip, NightSpan span, int cursor)
    {
        if (rows <= 0)
            return;
        StripFrame.Draw(sheet, place, top, rows, strip, span);
        DotGrid first = Dots(strip.First, place, rows, span);
        DotGrid? second = strip.Second is Trace trace ? Dots(trace, place, rows, span) : null;
        int at = span.Column(cursor, place.Columns);
        for (int row = 0; row < rows; row++)
        {
            for (int x = 0; x < place.Columns; x++)
                sheet.Put(place.Left + x, top + row, Glyph(first, second, x, row), InkOf(second, x, row, x == at));
            if (sheet[place.Left + at, top + row].Glyph == ' ')
                sheet.Put(place.Left + at, top + row, '┊');
        }

        if (strip.Second is Trace over)
            Arrows(sheet, place, top, over, span);
    }

    private static DotGrid Dots(Trace trace, Place place, int rows, NightSpan span)
    {
        DotGrid grid = new(place.Columns, rows);
        Stroking.Draw(grid, trace.Columns(span, grid.Columns), trace.Axis, trace.Stroke);
        return grid;
    }

    private static char Glyph(DotGrid first, DotGrid? second, int x, int row)
    {
        if (second is not null && second.IsSet(x, row))
            return (char)(second.Glyph(x, row) | first.Glyph(x, row));
        return first.IsSet(x, row) ? first.Glyph(x, row) : ' ';
    }

    private static Ink InkOf(DotGrid? second, int x, int row, bool pointed)
        => pointed ? Ink.Pointer : second is not null && second.IsSet(x, row) ? Ink.Second : Ink.First;

    /// <summary>Marks where a curve runs above the strip.</summary>
    private static void Arrows(Sheet sheet, Place place, int top, Trace trace, NightSpan span)
    {
        Extent[] cells = trace.Columns(span, place.Columns);
        for (int x = 0; x < place.Columns; x++)
        {
            if (cells[x].Low > trace.Axis.High && sheet[place.Left + x, top].Glyph is ' ' or '┊')
                sheet.Put(place.Left + x, top, '↑', Ink.Second);
        }
    }
}
