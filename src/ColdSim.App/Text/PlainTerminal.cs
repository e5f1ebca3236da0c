namespace ColdSim.App.Text;

/// <summary>Whether a terminal has the characters of ASCII alone, as far as its environment tells.</summary>
internal static class PlainTerminal
{
    // The console of a computer without a desktop, and the terminals that it goes back to.
    private static readonly string[] Kinds = ["linux", "vt", "ansi", "cons25", "sun"];

    /// <summary>Whether the terminal's kind or the locale says so. Where no locale is set, nothing is known against more.</summary>
    /// <param name="variable">The value of an environment variable; null where it is not set.</param>
    public static bool Is(Func<string, string?> variable)
    {
        string kind = variable("TERM") ?? "";
        return Array.Exists(Kinds, k => kind.StartsWith(k, StringComparison.Ordinal)) || Locale(variable) is { } locale && !IsUnicode(locale);
    }

    // The first that is set, as the C library has it.
    private static string? Locale(Func<string, string?> variable)
    {
        foreach (string name in (ReadOnlySpan<string>)["LC_ALL", "LC_CTYPE", "LANG"])
        {
            if (variable(name) is { Length: > 0 } locale)
                return locale;
        }

        return null;
    }

    private static bool IsUnicode(string locale)
        => locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("utf8", StringComparison.OrdinalIgnoreCase);
}
