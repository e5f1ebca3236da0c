namespace ColdSim.Files;

/// <summary>Quotes of foreign text in messages: as much of it as finds it again, and no more.</summary>
internal static class Quote
{
    /// <summary>The most characters of a quote.</summary>
    public const int Longest = 60;

    // A file's name is no use unless it is whole; none that a disk takes is longer.
    private const int LongestPath = 255;

    /// <summary>The text, visible, and cut with an ellipsis where it is long.</summary>
    /// <param name="text">What was found.</param>
    public static string Of(string text) => Cut(text, Longest);

    /// <summary>The same for a file's name.</summary>
    /// <param name="path">The name as it was given.</param>
    public static string OfPath(string path) => Cut(path, LongestPath);

    private static string Cut(string text, int longest)
    {
        ArgumentNullException.ThrowIfNull(text);

        // Nothing becomes shorter by becoming visible, so what lies beyond need not be looked at.
        string visible = VisibleText.Of(text.Length > 2 * longest ? text[..(2 * longest)] : text);
        if (visible.Length <= longest && text.Length <= 2 * longest)
            return visible;
        int end = longest - 1;
        if (char.IsHighSurrogate(visible[end - 1]))
            end--;
        return visible[..end] + "…";
    }
}
