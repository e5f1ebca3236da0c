using System.Text.RegularExpressions;

namespace ColdSim.Files.Toml;

/// <summary>A line that does not parse: what is wrong with it, what was probably meant, and what replaces it so that the rest can be read.</summary>
internal static partial class BrokenLine
{
    /// <summary>The parser's complaint in words for somebody who does not know the grammar.</summary>
    public static string Fault(string message)
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
        if (plain.Contains("date time/offset", StringComparison.Ordinal))
            return "a date or time that is not in the calendar";
        return "not TOML: " + Quote.Of(plain);
    }

    /// <summary>What is usually meant where a line does not parse, or null.</summary>
    public static string? Hint(string line)
    {
        int equals = line.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
            return "accepted: key = value, [table], # comment";
        string value = line[(equals + 1)..].Trim();
        if (Date().IsMatch(value))
            return "accepted: a date such as 2025-01-14, with its time and offset where they are needed: 2025-01-14T16:00:00-07:00; " + CalendarYears.Years;
        if (DecimalComma().Match(value) is { Success: true } comma)
            return $"a decimal comma; write {comma.Value.Replace(',', '.')}";
        bool bare = value.Length > 0 && value[0] is not ('"' or '\'' or '[' or '{');
        return bare ? $"a value with a unit, and any other text, needs quotes: \"{Quote.Of(Uncommented(value))}\"" : null;
    }

    /// <summary>A line that parses: the header it was meant to be, so that the keys below it keep their table, else nothing.</summary>
    public static string Repair(string line)
    {
        Match header = Header().Match(line);
        if (!header.Success)
            return "";
        string name = header.Groups["name"].Value;
        return header.Groups["open"].Length == 2 ? $"[[{name}]]" : $"[{name}]";
    }

    private static string Uncommented(string value)
    {
        int comment = value.IndexOf('#', StringComparison.Ordinal);
        return (comment < 0 ? value : value[..comment]).Trim().Trim('"');
    }

    [GeneratedRegex(@"^\d{4}-\d\d-\d\d", RegexOptions.CultureInvariant)]
    private static partial Regex Date();

    [GeneratedRegex(@"^[-+]?\d+,\d+(?=\s*(#|$))", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^\s*(?<open>\[{1,2})\s*(?<name>[A-Za-z0-9_-]+(\.[A-Za-z0-9_-]+)*)[^=]*$", RegexOptions.CultureInvariant)]
    private static partial Regex Header();
}
