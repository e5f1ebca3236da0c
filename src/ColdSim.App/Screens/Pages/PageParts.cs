using ColdSim.App.Text;

namespace ColdSim.App.Screens.Pages;

/// <summary>What several pages have: a head, a foot, a paragraph.</summary>
internal static class PageParts
{
    /// <summary>The last row: a page's own keys, the first of them first; the frame goes on with those of every page.</summary>
    public static void Foot(Sheet sheet, params string[] keys)
    {
        sheet.Put(0, sheet.Height - 1, Fitting.Join([.. keys.Take(1), "? help", "q quit", .. keys.Skip(1)], "  ", sheet.Width));
        sheet.LastRowGoesOn = true;
    }

    /// <summary>A title and what stands beside it.</summary>
    public static void Head(Sheet sheet, string title, string beside)
    {
        sheet.PutBefore(sheet.Width, 0, beside);
        sheet.Put(0, 0, Fitting.Cut(Fitting.OneCellEach(title), sheet.Width - beside.Length - 2), Ink.Strong);
    }

    /// <summary>A paragraph in at most so many rows, and the row after it.</summary>
    public static int Paragraph(Sheet sheet, int top, string text, int most, Ink ink = Ink.Plain)
    {
        string[] lines = [.. Wrap.Lines(Fitting.OneCellEach(text), sheet.Width)];
        for (int i = 0; i < Math.Min(most, lines.Length); i++)
            sheet.Put(0, top + i, i == most - 1 && lines.Length > most ? Fitting.Cut(lines[i] + " …", sheet.Width) : Fitting.Cut(lines[i], sheet.Width), ink);
        return top + Math.Min(most, lines.Length);
    }

    /// <summary>First of some rows of which a chosen one is in sight.</summary>
    public static int FirstRow(int chosen, int rows, int count) => Math.Clamp(chosen - rows / 2, 0, Math.Max(0, count - rows));
}
