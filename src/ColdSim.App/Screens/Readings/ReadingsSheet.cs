using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Readings;

/// <summary>The page as a sheet: its head, and below it the form, the log or the fit. Pure.</summary>
internal static class ReadingsSheet
{
    /// <summary>From here on there is room for words beside the strip.</summary>
    public const int Wide = 100;

    private const int Top = 2;

    public static void Draw(Sheet sheet, ReadingsPage page)
    {
        string which = page.Scenario.Rig.Cylinders.Count == 1 ? CylinderWords.All(page.Scenario.Rig).TrimEnd(',') : CylinderWords.Names(page.Scenario.Rig);
        which = Fitting.Cut(which, sheet.Width / 2);
        sheet.PutBefore(sheet.Width, 0, which);
        sheet.Put(0, 0, Fitting.Cut(Fitting.OneCellEach(page.Scenario.Title), sheet.Width - which.Length - 2), Ink.Strong);
        int x = 0;
        foreach ((ReadingsPart part, string name) in ((ReadingsPart, string)[])[(ReadingsPart.Log, "log"), (ReadingsPart.Entry, "new reading"), (ReadingsPart.Fit, "fit")])
        {
            string text = part == page.Part ? $"[{name}]" : $" {name} ";
            sheet.Put(x, 1, text, part == page.Part ? Ink.Strong : Ink.Plain);
            x += text.Length + 1;
        }

        if (page.Wanted is not null)
            sheet.Put(x + 1, 1, page.Writing ? "writing…" : "reckoning…");
        if (page.File is null)
        {
            Body(sheet, [("The demo has no file of its own, so no log stands beside it.", Ink.Plain), ("'coldsim new trip.toml' writes a scenario to begin with; 'coldsim view trip.toml' opens it.", Ink.Plain)], 0);
            PageParts.Foot(sheet);
            return;
        }

        if (page.Part == ReadingsPart.Entry)
        {
            EntrySheet.Draw(sheet, page);
            return;
        }

        IReadOnlyList<(string Text, Ink Ink)> lines = Lines(page, sheet.Width);
        int rows = sheet.Height - Top - 1;
        Body(sheet, lines, Math.Clamp(page.Row, 0, Math.Max(0, lines.Count - rows)));
        sheet.Put(0, sheet.Height - 1, Fitting.Join(
            [
                page.Part == ReadingsPart.Log ? "Enter new reading" : page.Fit is null ? "Enter fit" : "Enter fit again",
                page.Part == ReadingsPart.Log ? "→ fit" : "← log",
                .. page.Fit?.Prediction is null ? Array.Empty<string>() : [page.WithFit ? "Space predict by the scenario" : "Space predict by the fit"],
                .. lines.Count > rows ? ["↑↓ scroll"] : Array.Empty<string>(), "? help", "q quit",
            ],
            "  ", sheet.Width));
    }

    /// <summary>What can be scrolled.</summary>
    public static IReadOnlyList<(string Text, Ink Ink)> Lines(ReadingsPage page, int width)
    {
        List<(string, Ink)> lines = [];
        if (page.Notice.Length > 0)
            lines.AddRange([.. Fitting.Wrap(page.Notice, width).Select(l => (l, Ink.Strong)), ("", Ink.Plain)]);
        lines.AddRange(page.Part == ReadingsPart.Fit ? FitLines.Of(page, width) : LogLines.Of(page, width));
        return lines;
    }

    private static void Body(Sheet sheet, IReadOnlyList<(string Text, Ink Ink)> lines, int first)
    {
        for (int y = Top; y < sheet.Height - 1 && first < lines.Count; y++, first++)
            sheet.Put(0, y, Fitting.Cut(lines[first].Text, sheet.Width), lines[first].Ink);
    }
}
