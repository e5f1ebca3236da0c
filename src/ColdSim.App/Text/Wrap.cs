using System.Text;
using ColdSim.Files;

namespace ColdSim.App.Text;

/// <summary>Breaks a paragraph at spaces; a number is never parted from its unit.</summary>
internal static class Wrap
{
    /// <summary>The width that everything on a plain terminal keeps to.</summary>
    public const int Columns = 80;

    public static IReadOnlyList<string> Lines(string text, int width = Columns, string first = "", string rest = "")
    {
        List<string> lines = [];
        StringBuilder line = new(first);
        bool empty = true;
        foreach (string word in Words(VisibleText.Of(text)))
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear().Append(rest);
                empty = true;
            }

            if (!empty)
                line.Append(' ');
            line.Append(word);
            empty = false;
        }

        lines.Add(line.ToString());
        return lines;
    }

    /// <summary>A text in at most so many characters, its end marked where it is cut.</summary>
    public static string Cut(string text, int width) => text.Length <= width ? text : $"{text[..(width - 3)]}...";

    private static IEnumerable<string> Words(string text)
    {
        string? number = null;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (number is not null)
            {
                yield return $"{number} {word}";
                number = null;
            }
            else if (char.IsAsciiDigit(word[^1]))
            {
                number = word;
            }
            else
            {
                yield return word;
            }
        }

        if (number is not null)
            yield return number;
    }
}
