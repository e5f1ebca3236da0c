namespace ColdSim.App.Screens;

/// <summary>What stands left and right of a strip. Labels get a row each and never share one.</summary>
internal static class StripFrame
{
    public static void Draw(Sheet sheet, Place place, int top, int rows, Strip strip, NightSpan span)
    {
        for (int row = 0; row < rows; row++)
        {
            sheet.Put(place.Left - 1, top + row, row == 0 ? '┐' : row == rows - 1 ? '┘' : '│');
            sheet.Put(place.Right, top + row, row == 0 ? '┌' : row == rows - 1 ? '└' : '│');
        }

        sheet.PutBefore(place.Left - 1, top, strip.First.Axis.HighLabel);
        sheet.PutBefore(place.Left - 1, top + rows - 1, strip.First.Axis.LowLabel);
        Keys(sheet, place, top, rows, strip);
        Ends(sheet, place, top, rows, strip, span);
    }

    /// <summary>Between the axis labels, as many keys as there are rows.</summary>
    private static void Keys(Sheet sheet, Place place, int top, int rows, Strip strip)
    {
        int row = 1;
        foreach (Trace trace in strip.HasRightAxis ? [strip.First] : strip.Traces.Reverse())
        {
            if (row >= rows - 1)
                return;
            Ink ink = trace == strip.First ? Ink.First : Ink.Second;
            sheet.Put(0, top + row, trace.Key, ink);
            sheet.Put(trace.Key.Length + 1, top + row, trace.Name);
            row++;
        }

        if (strip.Missing.Length > 0 && row < rows - 1)
            sheet.Put(0, top + row, Fitting.Cut(strip.Missing, place.Left - 1));
    }

    /// <summary>Each name at the height where its curve ends; a right axis keeps its top and bottom row, and its curve brings its key.</summary>
    private static void Ends(Sheet sheet, Place place, int top, int rows, Strip strip, NightSpan span)
    {
        bool[] taken = new bool[rows];
        if (strip is { HasRightAxis: true, Second: Trace second })
        {
            sheet.Put(place.Right + 2, top, second.Axis.HighLabel);
            sheet.Put(place.Right + 2, top + rows - 1, second.Axis.LowLabel);
            taken[0] = taken[rows - 1] = true;
        }

        foreach (Trace trace in strip.Traces.OrderByDescending(t => strip.HasRightAxis && t == strip.Second).ThenByDescending(t => Height(t, span)))
        {
            double height = Height(trace, span);
            if (double.IsNaN(height))
                continue;
            int wanted = (int)Math.Clamp(Math.Round((1 - height) * (rows - 1)), 0, rows - 1);
            int row = Enumerable.Range(0, rows).Where(r => !taken[r]).DefaultIfEmpty(-1).MinBy(r => Math.Abs(r - wanted));
            if (row < 0)
                continue;
            taken[row] = true;
            string key = strip.HasRightAxis && trace == strip.Second ? trace.Key + " " : "";
            sheet.Put(place.Right + 2, top + row, key + trace.Name, trace == strip.First ? Ink.First : Ink.Second);
        }
    }

    private static double Height(Trace trace, NightSpan span)
        => (trace.End(span) - trace.Axis.Low) / (trace.Axis.High - trace.Axis.Low);
}
