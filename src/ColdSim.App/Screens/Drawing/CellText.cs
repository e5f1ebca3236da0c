using System.Globalization;
using System.Text;
using ColdSim.Files;

namespace ColdSim.App.Screens.Drawing;

/// <summary>Text for a grid of cells: one cell a character, no longer than the room.</summary>
internal static class CellText
{
    /// <summary>Cuts with an ellipsis.</summary>
    public static string Cut(string text, int width)
        => text.Length <= width ? text : width <= 1 ? "" : string.Concat(text.AsSpan(0, width - 1).TrimEnd(), "…");

    /// <summary>Breaks between words.</summary>
    public static IEnumerable<string> Wrap(string text, int width)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;
    }

    /// <summary>Joins as many parts as fit, the first always, the earlier before the later.</summary>
    public static string Join(IEnumerable<string> parts, string between, int width)
        => parts.Aggregate("", (all, part) => all.Length == 0 ? part
            : all.Length + between.Length + part.Length <= width ? all + between + part : all);

    /// <summary>A person's own words, visible, without what would break the grid: marks, and glyphs two cells wide.</summary>
    public static string SingleWidth(string text)
    {
        StringBuilder kept = new(text.Length);
        foreach (Rune rune in VisibleText.Of(text).EnumerateRunes())
        {
            UnicodeCategory kind = Rune.GetUnicodeCategory(rune);
            if (kind is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format)
                continue;
            kept.Append(rune.Value < 0x1100 && kind is not (UnicodeCategory.Control or UnicodeCategory.OtherNotAssigned)
                || rune.Value is >= 0x2010 and < 0x2300 or >= 0x2400 and <= 0x2421 ? rune.ToString() : "?");
        }

        return kept.ToString();
    }
}
