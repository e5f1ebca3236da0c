using System.Text;
using ColdSim.Files.Quantities;

namespace ColdSim.Files.Scenarios.Schemas;

/// <summary>Regular expressions, as JSON Schema has them, of the texts that the readers of quantities, times and prices accept.</summary>
internal static class TextPattern
{
    private const string Exponent = "(?:[eE][-−+]?\\d+)?";
    private const string Clock = "(?:[01]?\\d|2[0-3]):[0-5]\\d(?::[0-5]\\d)?";
    private const string SignOfMoney = "(?:[^-−+\\d\\s.,/A-Za-z]\\s*)?";

    // What does not matter within a unit: spaces, brackets, dots between factors.
    private const string Loose = "[\\s()·⋅∙*^]*";

    // 25,000 or 8.5 or 1.2e3 or .5, a fraction, and a whole number with one.
    private const string Number =
        $"[-−+]?(?:\\d+(?: +\\d+)?/\\d+|(?:[1-9]\\d{{0,2}}(?:,\\d{{3}})+|\\d+)(?:\\.\\d*)?{Exponent}|\\.\\d+{Exponent})";

    /// <summary>A time of day.</summary>
    public static string Time => Whole(Clock);

    /// <summary>A span of the clock.</summary>
    public static string Span => Whole(SpanOfClock);

    /// <summary>A span of the clock with a flow behind it.</summary>
    public static string SpanWithFlow => Whole($"{SpanOfClock}\\s+{Number}\\s*(?:{Units(Dimension.VolumeFlow)})");

    /// <summary>A date.</summary>
    public static string Date => "^\\d{4}-\\d\\d-\\d\\d$";

    /// <summary>A date with its time, as TOML writes it.</summary>
    /// <param name="timeMayBeMissing">Whether a date alone is accepted.</param>
    public static string DateAndTime(bool timeMayBeMissing)
    {
        const string time = "[Tt ]\\d\\d:\\d\\d(?::\\d\\d(?:\\.\\d+)?)?(?:[Zz]|[-+]\\d\\d:\\d\\d)?";
        return $"^\\d{{4}}-\\d\\d-\\d\\d{(timeMayBeMissing ? $"(?:{time})?" : time)}$";
    }

    /// <summary>A quantity with its unit.</summary>
    public static string Quantity(Dimension dimension) => dimension == Dimension.Ratio
        ? Whole($"{Number}\\s*%?|{Parts}")
        : Whole($"{Number}\\s*(?:{Units(dimension)})");

    /// <summary>A price.</summary>
    /// <param name="each">Whether one for an exchange is accepted.</param>
    public static string Price(bool each)
    {
        string of = $"{Units(Dimension.Mass)}|{Units(Dimension.Volume)}{(each ? "|" + AnyCase("exchange") : "")}";
        return Whole($"{SignOfMoney}{Number}\\s*{SignOfMoney}(?:/|\\sper\\s)\\s*(?:{of})");
    }

    /// <summary>One of a few words, in capitals or not.</summary>
    /// <param name="words">The words.</param>
    /// <param name="spacesMatter">Whether "20lb" is another word than "20 lb".</param>
    public static string OneOf(IEnumerable<string> words, bool spacesMatter)
        => Whole(string.Join('|', words.Select(w => spacesMatter ? AnyCase(w) : AnyCase(w).Replace(" ", " *", StringComparison.Ordinal))));

    private static string SpanOfClock => $"{Clock}\\s*[-–−]\\s*(?:{Clock}|24:00(?::00)?)";

    private static string Parts
    {
        get
        {
            string words = string.Join('|', RatioWords.Words.Select(w => AnyCase(w).Replace(" ", "[ -]", StringComparison.Ordinal)));
            return $"(?:(?:{AnyCase("a")}|{AnyCase("one")})[ -])?(?:{words})(?:[ -]{AnyCase("full")})?";
        }
    }

    private static string Whole(string pattern) => $"^\\s*(?:{pattern})\\s*$";

    private static string Units(Dimension dimension) => string.Join(
        '|',
        SpellingTable.All.Where(u => u.Dimension == dimension)
            .SelectMany(u => u.Spellings.Select(s => Unit(s, u.AnyCase)))
            .Distinct(StringComparer.Ordinal));

    private static string Unit(string spelling, bool anyCase)
    {
        StringBuilder pattern = new();
        foreach (char c in spelling)
        {
            if (char.IsWhiteSpace(c) || c is '(' or ')' or '·' or '⋅')
            {
                if (!pattern.ToString().EndsWith(Loose, StringComparison.Ordinal))
                    pattern.Append(Loose);
                continue;
            }

            pattern.Append(c switch
            {
                '/' => $"{Loose}/{Loose}",
                '2' or '²' => "\\^?[2²₂]",
                '3' or '³' => "\\^?[3³]",
                '°' => "[°º˚]",
                _ when anyCase && char.IsAsciiLetter(c) => AnyCase(c.ToString()),
                _ => Literal(c),
            });
        }

        return pattern.ToString().Replace(Loose + Loose, Loose, StringComparison.Ordinal).TrimStart();
    }

    private static string AnyCase(string word)
        => string.Concat(word.Select(c => char.IsAsciiLetter(c) ? $"[{char.ToLowerInvariant(c)}{char.ToUpperInvariant(c)}]" : Literal(c)));

    private static string Literal(char c) => "\\^$.|?*+()[]{}/".Contains(c, StringComparison.Ordinal) ? $"\\{c}" : c.ToString();
}
