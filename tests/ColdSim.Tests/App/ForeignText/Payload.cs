using System.Globalization;
using System.Text;
using Xunit;

namespace ColdSim.Tests.App.ForeignText;

/// <summary>Text that a terminal would obey, or that would hide or turn round what is beside it, and the check that none of it comes out.</summary>
internal static class Payload
{
    /// <summary>Twelve kinds.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "\u001b[31mRED",
        "\u001b]0;OWNED\u0007",
        "\u009b2J\u009d0;x\u009c",
        "x\u007f\b\b\bAll nights hold",
        "x\rAll nights hold",
        "x\nAll nights hold",
        "x\0y\tz\u000b\f",
        "\u202egnp.exe",
        "\u2067x\u2069\u200f\u061c",
        "o\u200bn\u2060e\ufeff \u00adtwo\u3164",
        "x\u2028y\u2029z\u0085",
        "ok\U000e0041\U000e007f",
    ];

    /// <summary>All of them one after another.</summary>
    public static string Joined { get; } = string.Concat(All);

    /// <summary>As a TOML text.</summary>
    public static string Toml(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (Rune rune in text.EnumerateRunes())
            quoted.Append(CultureInfo.InvariantCulture, $"\\U{rune.Value:X8}");
        return quoted.Append('"').ToString();
    }

    /// <summary>Fails where a text holds a control code other than a line feed, or a character that is not seen.</summary>
    /// <param name="text">What came out.</param>
    /// <param name="from">What it came out of.</param>
    /// <param name="ownStyles">Whether our own codes for bold may be there.</param>
    public static void AssertNone(string text, string from, bool ownStyles = false)
    {
        string plain = ownStyles ? text.Replace("\e[1m", "", StringComparison.Ordinal).Replace("\e[0m", "", StringComparison.Ordinal) : text;
        int at = 0;
        foreach (Rune rune in plain.EnumerateRunes())
        {
            UnicodeCategory kind = Rune.GetUnicodeCategory(rune);
            bool hidden = kind is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator || rune.Value == 0x3164;
            if (hidden && rune.Value != '\n')
                Assert.Fail(string.Create(CultureInfo.InvariantCulture, $"U+{rune.Value:X4} at {at} in what came of {Shown(from)}: {Shown(plain[Math.Max(0, at - 60)..Math.Min(plain.Length, at + 60)])}"));
            at += rune.Utf16SequenceLength;
        }

        Assert.DoesNotContain("\nAll nights hold", plain, StringComparison.Ordinal);
    }

    private static string Shown(string text) => string.Concat(text.Select(c => c is >= ' ' and < '\u007f' ? c.ToString() : string.Create(CultureInfo.InvariantCulture, $"<{(int)c:X4}>")));
}
