using System.Globalization;

namespace ColdSim.Files.Toml;

/// <summary>How large a text may be to be parsed at all, and where one is larger.</summary>
/// <remarks>Looked through before the parser sees it: the parser goes down a level of the stack for each bracket, and a stack that is full ends the program.</remarks>
internal static class TomlBounds
{
    /// <summary>The most characters of a text.</summary>
    public const int LargestText = 1_000_000;

    /// <summary>The most characters of a line.</summary>
    public const int LongestLine = 1 << 16;

    private const int Deepest = 32;
    private const int MostKeys = 20_000;

    private enum Within
    {
        Nothing,
        Comment,
        Quotes,
        Apostrophes,
        ThreeQuotes,
        ThreeApostrophes,
    }

    /// <summary>What is beyond the bounds, and where; null where nothing is.</summary>
    public static (TextPlace Place, string What, string Accepted)? Fault(string text)
    {
        int line = 1, lineStart = 0, depth = 0, parts = 1, keys = 0;
        Within within = Within.Nothing;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (i >= LargestText)
                return (new(line, i - lineStart + 1), "the file is larger than 1 MB", "accepted: up to 1 MB");
            if (i - lineStart >= LongestLine)
                return (new(line, 1), "a line longer than 64 kB", "accepted: lines of up to 64 kB");
            if (c == '\n')
            {
                (line, lineStart, parts) = (line + 1, i + 1, 1);
                if (within is not (Within.ThreeQuotes or Within.ThreeApostrophes))
                    within = Within.Nothing;
                continue;
            }

            if (within != Within.Nothing)
            {
                within = Inside(text, ref i, within);
                continue;
            }

            switch (c)
            {
                case '#': within = Within.Comment; break;
                case '"' or '\'': within = Opened(text, ref i); break;
                case '[' or '{':
                    (depth, parts) = (depth + 1, 1);
                    keys += i == lineStart ? 1 : 0;
                    break;
                case ']' or '}': depth = Math.Max(0, depth - 1); break;
                case '=' or ',': (keys, parts) = (keys + 1, 1); break;
                case '.': parts++; break;
            }

            if (Math.Max(depth, parts) > Deepest)
                return (new(line, i - lineStart + 1), string.Create(CultureInfo.InvariantCulture, $"nested over {Deepest} deep"), string.Create(CultureInfo.InvariantCulture, $"accepted: up to {Deepest}"));
            if (keys > MostKeys)
                return (new(line, i - lineStart + 1), "more than 20,000 keys and values", "accepted: up to 20,000");
        }

        return null;
    }

    // A quotation mark opens a text: three of them one that may run over several lines.
    private static Within Opened(string text, ref int i)
    {
        bool quotes = text[i] == '"';
        if (!IsThree(text, i))
            return quotes ? Within.Quotes : Within.Apostrophes;
        i += 2;
        return quotes ? Within.ThreeQuotes : Within.ThreeApostrophes;
    }

    private static Within Inside(string text, ref int i, Within within)
    {
        switch (within)
        {
            case Within.Quotes or Within.ThreeQuotes when text[i] == '\\' && i + 1 < text.Length && text[i + 1] is not '\n':
                i++;
                return within;
            case Within.Quotes when text[i] == '"':
            case Within.Apostrophes when text[i] == '\'':
                return Within.Nothing;
            case Within.ThreeQuotes when text[i] == '"' && IsThree(text, i):
            case Within.ThreeApostrophes when text[i] == '\'' && IsThree(text, i):
                i += 2;
                return Within.Nothing;
            default:
                return within;
        }
    }

    private static bool IsThree(string text, int i) => i + 2 < text.Length && text[i + 1] == text[i] && text[i + 2] == text[i];
}
