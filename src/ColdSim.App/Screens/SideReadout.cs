using ColdSim.App.Text;

namespace ColdSim.App.Screens;

/// <summary>The values at the cursor one below the other, beside the curves.</summary>
internal static class SideReadout
{
    public static void Draw(Sheet sheet, int left, NightView view)
    {
        for (int row = ScreenPlan.FirstStrip; row < sheet.Height - 1; row++)
            sheet.Put(left, row, '│');
        left += 2;
        int width = sheet.Width - left, y = ScreenPlan.FirstStrip;
        sheet.Put(left, y, CursorWords.Time(view), Ink.Pointer);
        y += 2;
        IReadOnlyList<IReadOnlyList<Reading>> groups = Reading.At(view);
        for (int g = 0; g < groups.Count; g++, y++)
        {
            if (g == groups.Count - 1)
                sheet.Put(left, y++, $"gas as gross heat, {view.Units.PowerUnit}");
            foreach (Reading reading in groups[g])
            {
                string value = reading.Value.Replace(" " + view.Units.PowerUnit, "", StringComparison.Ordinal);
                sheet.Put(left, y, reading.Name);
                sheet.PutBefore(sheet.Width, y++, value, Ink.Strong);
            }
        }

        IReadOnlyList<CylinderAtCursor> each = CylinderAtCursor.At(view);
        y = Lines(sheet, left, y, each.SelectMany(c => (IEnumerable<string>)
            [Fitting.Cut($"{c.Name}{(c.State.Length > 0 ? ": " : "")}{c.State}", width), $" {c.Left,9} {c.Liquid,9} {c.Pressure,10}"])) + (each.Count > 0 ? 1 : 0);
        y = Lines(sheet, left, y, Fitting.Wrap(CursorWords.Event(view), width)) + 1;
        y = Lines(sheet, left, y, Legend(view));
        string[] cautions = [.. Cautions.Short.SelectMany(c => Fitting.Wrap(c, width))];
        if (y + 1 + cautions.Length < sheet.Height - 1)
            Lines(sheet, left, sheet.Height - 1 - cautions.Length, cautions);
    }

    private static int Lines(Sheet sheet, int left, int y, IEnumerable<string> lines)
    {
        foreach (string line in lines.Take(Math.Max(0, sheet.Height - 1 - y)))
            sheet.Put(left, y++, line);
        return y;
    }

    private static IEnumerable<string> Legend(NightView view)
    {
        EventWords[] present = [.. view.Marks.Select(m => m.Words).Distinct().OrderByDescending(w => w.Rank)];
        return present.Length == 0 ? ["no events this night"] : ["events this night", .. present.Select(w => $"{w.Letter} {w.Sentence}")];
    }
}
