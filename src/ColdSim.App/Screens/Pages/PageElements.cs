using ColdSim.App.Screens.Drawing;
using ColdSim.App.Text;

namespace ColdSim.App.Screens.Pages;

/// <summary>The head, the foot and the paragraphs that several pages draw.</summary>
internal static class PageElements
{
    /// <summary>The last row: a word on what is shown, then a page's own keys; the frame adds those of every page.</summary>
    public static void Foot(Sheet sheet, string shown, IEnumerable<KeyBinding> keys)
    {
        IEnumerable<string> own = keys.Where(k => k.Brief.Length > 0).Select(k => k.Brief);
        string[] first = shown.Length > 0 ? [shown] : [];
        sheet.Put(0, sheet.Height - 1, CellText.Join([.. first, "? keys", "q quit", .. own], "  ", sheet.Width));
        sheet.LastRowContinues = true;
    }

    /// <summary>The first row: a title on the left, a word or two on the right.</summary>
    public static void Head(Sheet sheet, string title, string beside)
    {
        sheet.PutBefore(sheet.Width, 0, beside);
        sheet.Put(0, 0, CellText.Cut(CellText.SingleWidth(title), sheet.Width - beside.Length - 2), CellStyle.Strong);
    }

    /// <summary>Draws a paragraph in at most so many rows; returns the row after it.</summary>
    public static int Paragraph(Sheet sheet, int top, string text, int most, CellStyle style = CellStyle.Plain)
    {
        string[] lines = [.. Wrap.Lines(CellText.SingleWidth(text), sheet.Width)];
        for (int i = 0; i < Math.Min(most, lines.Length); i++)
            sheet.Put(0, top + i, i == most - 1 && lines.Length > most ? CellText.Cut(lines[i] + " …", sheet.Width) : CellText.Cut(lines[i], sheet.Width), style);
        return top + Math.Min(most, lines.Length);
    }

    /// <summary>The first row to show so that the chosen one is in sight.</summary>
    public static int FirstRow(int chosen, int rows, int count) => Math.Clamp(chosen - rows / 2, 0, Math.Max(0, count - rows));
}
