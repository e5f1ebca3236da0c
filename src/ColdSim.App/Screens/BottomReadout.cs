namespace ColdSim.App.Screens;

/// <summary>The values at the cursor in a few rows below the curves.</summary>
internal static class BottomReadout
{
    private static readonly int[] FourAcross = [0, 17, 37, 58];
    private static readonly int[] TwoAcross = [0, 30];

    public static void Draw(Sheet sheet, ScreenPlan plan, NightView view)
    {
        int y = plan.ReadoutRow;
        string time = CursorWords.Time(view);
        sheet.Put(0, y, time, Ink.Pointer);
        sheet.Put(time.Length + 2, y, Fitting.Cut(CursorWords.Event(view), sheet.Width - time.Length - 2));
        int[] lefts = plan.ReadingsAcross == 4 ? FourAcross : TwoAcross;
        int count = 0;
        foreach (Reading reading in Reading.At(view).SelectMany(r => r))
        {
            int x = lefts[count % lefts.Length], row = y + 1 + count++ / lefts.Length;
            sheet.Put(x, row, reading.Brief);
            sheet.Put(x + reading.Brief.Length + 1, row, reading.Value, Ink.Strong);
        }

        int below = y + 1 + count / lefts.Length;
        IReadOnlyList<CylinderAtCursor> each = CylinderAtCursor.At(view);
        for (int c = 0; c < Math.Min(plan.EachCylinder, each.Count); c++)
            sheet.Put(0, below++, Fitting.Cut(Cylinder(each, c), sheet.Width));
        if (plan.Legend)
            sheet.Put(0, below, Fitting.Join(Legend(view), "  ", sheet.Width));
    }

    private static string Cylinder(IReadOnlyList<CylinderAtCursor> each, int place)
    {
        int name = each.Max(c => c.Name.Length);
        CylinderAtCursor own = each[place];
        return $"{own.Name.PadRight(Math.Min(name, 24))} {own.Left,9} left, liquid {own.Liquid,7}, {own.Pressure,8}{(own.State.Length > 0 ? ", " : "")}{own.State}";
    }

    private static IEnumerable<string> Legend(NightView view)
    {
        EventWords[] present = [.. view.Marks.Select(m => m.Words).Distinct().OrderByDescending(w => w.Rank)];
        return present.Length == 0 ? [""]
            : present.Select((w, i) => $"{(i == 0 ? "events: " : "")}{w.Letter} {w.Legend}");
    }
}
