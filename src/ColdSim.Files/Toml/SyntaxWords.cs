namespace ColdSim.Files.Toml;

/// <summary>Puts a parser's complaint into words for somebody who does not know the grammar.</summary>
internal static class SyntaxWords
{
    /// <summary>What was found.</summary>
    public static string Of(string message)
    {
        string plain = message.Replace("\r", "", StringComparison.Ordinal).Replace("\n", "␤", StringComparison.Ordinal).Trim();
        if (plain.Contains("expecting a value", StringComparison.Ordinal) || plain.Contains("<eof>", StringComparison.Ordinal))
            return "no readable value after '='";
        if (plain.Contains("Expecting `=`", StringComparison.Ordinal))
            return "a key without '='";
        if (plain.Contains("newline in a string", StringComparison.Ordinal) || plain.Contains("End-Of-File found on string", StringComparison.Ordinal))
            return "a text without its closing quote";
        if (plain.Contains("expecting `]`", StringComparison.Ordinal))
            return "a '[' without its ']'";
        return "not TOML: " + plain;
    }

    /// <summary>What is usually meant where a line does not parse, or null.</summary>
    public static string? Hint(string line)
    {
        int equals = line.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
            return "accepted: key = value, [table], # comment";
        string value = line[(equals + 1)..].Trim();
        bool bare = value.Length > 0 && value[0] is not ('"' or '\'' or '[' or '{');
        return bare ? $"a value with a unit, and any other text, stands in quotes: \"{Uncommented(value)}\"" : null;
    }

    private static string Uncommented(string value)
    {
        int comment = value.IndexOf('#', StringComparison.Ordinal);
        return (comment < 0 ? value : value[..comment]).Trim().Trim('"');
    }
}
