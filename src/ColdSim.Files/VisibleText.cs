using System.Globalization;
using System.Text;

namespace ColdSim.Files;

/// <summary>
/// Text from outside as one line that is safe to show: whatever a terminal would obey instead of print, and whatever would hide or turn round the
/// text beside it, is replaced by a sign for it.
/// </summary>
/// <remarks>
/// What is read is kept as it was written, so that names still match and are written back unchanged; text passes through here where it is shown.
/// Applying it twice changes nothing.
/// </remarks>
internal static class VisibleText
{
    private const char FirstPicture = '\u2400';
    private const char DeletePicture = '\u2421';

    /// <summary>The text with control codes as their pictures (<c>␛</c>) and marks of direction and of no width by their numbers (<c>U+202E</c>).</summary>
    /// <param name="text">One line: a line's end within it is shown too.</param>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int at = 0;
        while (at < text.Length && IsPlain(text, at))
            at++;
        return at == text.Length ? text : From(text, at);
    }

    /// <summary>Whether nothing in it needs replacing.</summary>
    /// <param name="text">The text.</param>
    public static bool IsPlain(string text) => ReferenceEquals(Of(text), text);

    /// <summary>A character for a grid of cells, where one character must stay one.</summary>
    /// <param name="glyph">The character.</param>
    public static char Of(char glyph) => glyph switch
    {
        < ' ' => (char)(FirstPicture + glyph),
        '\u007F' => DeletePicture,
        _ => glyph >= '\u0080' && !char.IsSurrogate(glyph) && IsHidden(char.GetUnicodeCategory(glyph)) ? '\uFFFD' : glyph,
    };

    private static string From(string text, int at)
    {
        StringBuilder visible = new(text, 0, at, text.Length + 32);
        for (; at < text.Length; at++)
        {
            char c = text[at];
            if (IsPlain(text, at))
                visible.Append(c);
            else if (c < ' ')
                visible.Append((char)(FirstPicture + c));
            else if (c == '\u007F')
                visible.Append(DeletePicture);
            else if (char.IsSurrogatePair(text, at))
                visible.Append(CultureInfo.InvariantCulture, $"U+{char.ConvertToUtf32(c, text[++at]):X4}");
            else
                visible.Append(CultureInfo.InvariantCulture, $"U+{(int)c:X4}");
        }

        return visible.ToString();
    }

    // ASCII goes through without a look at any table.
    private static bool IsPlain(string text, int at)
    {
        char c = text[at];
        if (c < '\u0080')
            return c is >= ' ' and < '\u007F';
        if (c is '\u200C' or '\u200D')
            return JoinsLetters(text, at);
        if (!char.IsSurrogate(c))
            return !IsHidden(char.GetUnicodeCategory(c)) && c is not ('\u3164' or '\uFFA0' or '\u115F' or '\u1160');
        if (char.IsLowSurrogate(c))
            return at > 0 && char.IsHighSurrogate(text[at - 1]);
        return at + 1 < text.Length && char.IsLowSurrogate(text[at + 1]) && !IsHidden(CharUnicodeInfo.GetUnicodeCategory(text, at))
            && char.ConvertToUtf32(c, text[at + 1]) is not (>= 0xE0100 and <= 0xE01EF);
    }

    // Some scripts and pictures are spelled with joiners; between other letters they only make two names look like one.
    private static bool JoinsLetters(string text, int at)
        => at > 0 && at + 1 < text.Length && text[at - 1] >= '\u0300' && text[at + 1] >= '\u0300' && text[at - 1] is not ('\u200C' or '\u200D');

    private static bool IsHidden(UnicodeCategory kind)
        => kind is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate;
}
