namespace ColdSim.App.Screens;

/// <summary>The night's events as a list to choose from.</summary>
internal static class EventsPage
{
    public static void Draw(Sheet sheet, NightView view)
    {
        IReadOnlyList<EventMark> marks = view.Marks;
        int top = 4, rows = sheet.Height - top - 2;
        sheet.Put(0, 3, $"    {"when",-9}{"inside",9}{"liquid",9}{"cylinder",10}{"left",9}  what");
        if (marks.Count == 0)
            sheet.Put(0, top, "    no event this night");
        int first = Math.Clamp(view.Row - rows / 2, 0, Math.Max(0, marks.Count - rows));
        for (int i = first; i < Math.Min(marks.Count, first + rows); i++)
            sheet.Put(0, top + i - first, Fitting.Cut(Line(marks[i], i == view.Row, view), sheet.Width), i == view.Row ? Ink.Pointer : Ink.Plain);
        if (marks.Count > rows)
            sheet.Put(0, sheet.Height - 2, $"    {view.Row + 1} of {marks.Count}");
        sheet.Put(0, sheet.Height - 1, Fitting.Join(["↑↓ choose", "Enter go there", "Esc back", "n night", "q quit"], "  ", sheet.Width));
    }

    private static string Line(EventMark mark, bool chosen, NightView view)
    {
        string inside = double.IsNaN(mark.Event.Inside_K) ? "none" : view.Units.Temperature(mark.Event.Inside_K);
        return $"{(chosen ? '>' : ' ')} {mark.Words.Letter} {CursorWords.Clock(mark.Event.Time),-9}{inside,9}"
            + $"{view.Units.Temperature(mark.Event.Liquid_K),9}{view.Units.Pressure(mark.Event.CylinderPressure_Pa),10}"
            + $"{view.Units.Mass(mark.Event.Left_kg),9}  {CursorWords.Sentence(mark)}";
    }
}
