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

    /// <summary>Whether there are too few rows between the axis labels for keys and names.</summary>
    private static bool KeysAtEnds(int rows, Strip strip) => rows - 2 < (strip.HasRightAxis ? 1 : strip.Traces.Count());

    /// <summary>Keys and names between the axis labels.</summary>
    private static void Keys(Sheet sheet, Place place, int top, int rows, Strip strip)
    {
        if (KeysAtEnds(rows, strip))
            return;
        int row = 1;
        foreach (Trace trace in strip.HasRightAxis ? [strip.First] : strip.Traces.Reverse())
        {
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
        int first = 0, last = rows - 1;
        if (strip is { HasRightAxis: true, Second: Trace second })
        {
            sheet.Put(place.Right + 2, top, second.Axis.HighLabel);
            sheet.Put(place.Right + 2, top + rows - 1, second.Axis.LowLabel);
            (first, last) = (1, rows - 2);
        }

        Trace[] named = [.. strip.Traces.Reverse().Where(t => !double.IsNaN(Height(t, span))).Take(Math.Max(0, last - first + 1))
            .OrderByDescending(t => Height(t, span))];
        for (int i = 0; i < named.Length; i++)
        {
            int below = named.Length - 1 - i;
            int wanted = (int)Math.Round((1 - Height(named[i], span)) * (rows - 1));
            int row = Math.Clamp(wanted, first, last - below);
            first = row + 1;
            string key = KeysAtEnds(rows, strip) || (strip.HasRightAxis && named[i] == strip.Second) ? named[i].Key + " " : "";
            sheet.Put(place.Right + 2, top + row, key + named[i].Name, named[i] == strip.First ? Ink.First : Ink.Second);
        }
    }

    private static double Height(Trace trace, NightSpan span)
        => (trace.End(span) - trace.Axis.Low) / (trace.Axis.High - trace.Axis.Low);
}
