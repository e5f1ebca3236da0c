namespace ColdSim.Files.Quantities;

/// <summary>Words that are said instead of a part: "half", "a third", "empty".</summary>
internal static class RatioWords
{
    private static readonly (string Word, double Ratio)[] All =
    [
        ("empty", 0), ("quarter", 0.25), ("third", 1.0 / 3), ("half", 0.5), ("two thirds", 2.0 / 3), ("three quarters", 0.75), ("full", 1),
    ];

    /// <summary>The words alone.</summary>
    public static IEnumerable<string> Words => All.Select(a => a.Word);

    /// <summary>The part that a word means, or null. "a half", "one-half" and "half full" are the same word.</summary>
    public static double? Find(string text)
    {
        if (text.Length is 0 or > 24 || !char.IsAsciiLetter(text[0]))
            return null;
        string word = text.Trim().ToLowerInvariant().Replace('-', ' ');
        foreach (string before in (string[])["a ", "one "])
        {
            if (word.StartsWith(before, StringComparison.Ordinal))
                word = word[before.Length..];
        }

        if (word.EndsWith(" full", StringComparison.Ordinal))
            word = word[..^" full".Length];
        foreach ((string known, double ratio) in All)
        {
            if (word == known)
                return ratio;
        }

        return null;
    }
}
