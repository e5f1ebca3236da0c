using System.Globalization;

namespace ColdSim.Files.Quantities;

/// <summary>Reads the number at the start of a text, the same way everywhere in the world.</summary>
/// <remarks>
/// Accepted: <c>12</c>, <c>-8.5</c>, <c>25,000</c>, <c>1.2e3</c>, <c>1/3</c>, <c>12 1/4</c>, a Unicode minus. A comma groups three
/// digits before the point and is nothing else.
/// </remarks>
internal static class NumberText
{
    private const string DecimalComma = "a decimal comma; write";

    /// <summary>Reads a number and returns what follows it.</summary>
    /// <param name="text">The whole text, without outer spaces.</param>
    /// <param name="value">The number.</param>
    /// <param name="rest">What follows it, without outer spaces.</param>
    /// <param name="fault">What is wrong with it.</param>
    public static bool TryRead(string text, out double value, out string rest, out string fault)
    {
        value = double.NaN;
        rest = fault = "";
        int i = 0;
        bool negative = false;
        if (i < text.Length && text[i] is '-' or '−' or '+')
        {
            negative = text[i] != '+';
            i++;
        }
        int start = i;
        while (i < text.Length && (char.IsAsciiDigit(text[i]) || text[i] == ',' || text[i] == '.'))
            i++;
        string digits = text[start..i];
        if (!digits.Any(char.IsAsciiDigit))
        {
            fault = text.Length == 0 ? "nothing is written" : $"'{Quote.Of(text)}' does not begin with a number";
            return false;
        }
        if (digits.EndsWith(',') && i < text.Length)
        {
            fault = $"'{Quote.Of(text)}' holds a comma that groups nothing";
            return false;
        }
        if (digits.Contains(',') && !CommasGroup(digits))
        {
            fault = digits.Count(c => c == ',') == 1 && !digits.Contains('.')
                ? $"{DecimalComma} {Quote.Of(text.Replace(',', '.'))}"
                : $"the commas of '{Quote.Of(text)}' are not between groups of three digits before the point";
            return false;
        }
        int exponentEnd = Exponent(text, i);
        string number = digits.Replace(",", "", StringComparison.Ordinal) + text[i..exponentEnd].Replace('−', '-');
        i = exponentEnd;
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out value) || !double.IsFinite(value))
        {
            fault = $"'{Quote.Of(text)}' does not begin with a number";
            return false;
        }
        i = Fraction(text, i, digits, ref value, out bool divided);
        if (divided && !double.IsFinite(value))
        {
            fault = $"'{Quote.Of(text)}' divides by zero";
            return false;
        }
        value = negative ? -value : value;
        rest = text[i..].Trim();
        return true;
    }

    /// <summary>Whether a fault is a comma where a point is wanted; it says then what to write.</summary>
    public static bool IsDecimalComma(string fault) => fault.StartsWith(DecimalComma, StringComparison.Ordinal);

    private static bool CommasGroup(string digits)
    {
        int point = digits.IndexOf('.', StringComparison.Ordinal);
        string whole = point < 0 ? digits : digits[..point];
        if (point >= 0 && digits[point..].Contains(','))
            return false;
        string[] groups = whole.Split(',');
        return groups[0].Length is >= 1 and <= 3 && groups[0][0] != '0' && groups.Skip(1).All(g => g.Length == 3);
    }

    private static int Exponent(string text, int at)
    {
        if (at >= text.Length || text[at] is not ('e' or 'E'))
            return at;
        int i = at + 1;
        if (i < text.Length && text[i] is '-' or '−' or '+')
            i++;
        int first = i;
        while (i < text.Length && char.IsAsciiDigit(text[i]))
            i++;
        return i > first ? i : at;
    }

    // "1/3" divides; "12 1/4" adds a fraction to a whole number.
    private static int Fraction(string text, int at, string digits, ref double value, out bool divided)
    {
        divided = false;
        if (!digits.All(char.IsAsciiDigit))
            return at;
        if (TryDenominator(text, at, out double under, out int end))
        {
            divided = true;
            value /= under;
            return end;
        }
        int over = at;
        while (over < text.Length && text[over] == ' ')
            over++;
        int overEnd = over;
        while (overEnd < text.Length && char.IsAsciiDigit(text[overEnd]))
            overEnd++;
        if (over == at || overEnd == over || !TryDenominator(text, overEnd, out under, out end))
            return at;
        divided = true;
        value += double.Parse(text[over..overEnd], CultureInfo.InvariantCulture) / under;
        return end;
    }

    private static bool TryDenominator(string text, int at, out double value, out int end)
    {
        value = 0;
        end = at;
        if (at >= text.Length || text[at] != '/')
            return false;
        int i = at + 1;
        while (i < text.Length && char.IsAsciiDigit(text[i]))
            i++;
        if (i == at + 1)
            return false;
        end = i;
        value = double.Parse(text[(at + 1)..i], CultureInfo.InvariantCulture);
        return true;
    }
}
