namespace ColdSim.Files.Quantities;

/// <summary>What is wrong with a written quantity.</summary>
/// <param name="What">What was found.</param>
/// <param name="Accepted">What is accepted, or null where <paramref name="What"/> says it.</param>
/// <param name="Nearest">The nearest unit, or null.</param>
internal sealed record QuantityFault(string What, string? Accepted = null, string? Nearest = null)
{
    public override string ToString()
    {
        string text = Accepted is null ? What : $"{What}; {Accepted}";
        return Nearest is null ? text : $"{text}; did you mean '{Nearest}'?";
    }
}

/// <summary>Reads a quantity with its unit into SI.</summary>
internal static class SiText
{
    /// <summary>Reads <paramref name="text"/>, such as "20 lb".</summary>
    /// <param name="text">Number and unit.</param>
    /// <param name="dimension">What it must measure.</param>
    /// <param name="si">The value in SI units.</param>
    /// <returns>The fault, or null.</returns>
    public static QuantityFault? Read(string text, Dimension dimension, out double si)
    {
        si = double.NaN;
        text = text.Trim();
        if (dimension == Dimension.Ratio && RatioWords.Find(text) is { } part)
        {
            si = part;
            return null;
        }

        if (!NumberText.TryRead(text, out double value, out string unit, out string fault))
            return new QuantityFault(fault, NumberText.IsDecimalComma(fault) ? null : Expected(dimension));
        if (unit.Length == 0)
        {
            if (dimension != Dimension.Ratio)
            {
                string withUnit = QuantityExample.WithUnit(dimension, text, value, _ => true, QuantityExample.Of(dimension));
                return new QuantityFault($"'{Quote.Of(text)}' has no unit", $"write {withUnit}; {Expected(dimension)}");
            }

            si = value;
            return null;
        }
        if (SpellingTable.Find(dimension, unit) is { } spelling)
        {
            si = spelling.ToSi(value);
            return double.IsFinite(si) ? null : new QuantityFault($"'{Quote.Of(text)}' is too large to be read");
        }
        if (dimension == Dimension.Power && PowerMeant(text, unit) is { } meant)
            return meant;
        if (SpellingTable.IsUnit(unit))
            return new QuantityFault($"'{Quote.Of(unit)}' is not a unit of {dimension.Name()}", Expected(dimension));
        string? nearest = NearestName.Of(unit, SpellingTable.All.Where(u => u.Dimension == dimension).SelectMany(u => u.Spellings));
        return new QuantityFault($"unknown unit '{Quote.Of(unit)}'", Expected(dimension), nearest);
    }

    // How people say a furnace's plate: "30k", "30,000 BTU".
    private static QuantityFault? PowerMeant(string text, string unit)
    {
        string number = Quote.Of(text[..^unit.Length].TrimEnd());
        if (unit is "k" or "K")
            return new QuantityFault($"'{Quote.Of(text)}' has no unit", $"write \"{number} kBTU/h\"; {Expected(Dimension.Power)}");
        bool thousands = unit.Equals("kBTU", StringComparison.OrdinalIgnoreCase);
        return thousands || unit.Equals("BTU", StringComparison.OrdinalIgnoreCase)
            ? new QuantityFault($"'{Quote.Of(unit)}' is an amount of heat, and a rate is needed", $"write \"{number} {(thousands ? "kBTU/h" : "BTU/h")}\"")
            : null;
    }

    private static string Expected(Dimension dimension) => dimension == Dimension.Ratio
        ? "accepted: a ratio such as 0.8, 80 % or 4/5"
        : $"accepted for {dimension.Name()}: {string.Join(", ", SpellingTable.Accepted(dimension))}";
}
