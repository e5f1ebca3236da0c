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
        if (!NumberText.TryRead(text, out double value, out string unit, out string fault))
            return new QuantityFault(fault, fault.StartsWith("a decimal", StringComparison.Ordinal) ? null : Expected(dimension));
        if (unit.Length == 0)
        {
            if (dimension != Dimension.Ratio)
                return new QuantityFault($"'{Quote.Of(text)}' has no unit", Expected(dimension));
            si = value;
            return null;
        }
        if (SpellingTable.Find(dimension, unit) is { } spelling)
        {
            si = spelling.ToSi(value);
            return double.IsFinite(si) ? null : new QuantityFault($"'{Quote.Of(text)}' is too large to be read");
        }
        if (SpellingTable.IsUnit(unit))
            return new QuantityFault($"'{Quote.Of(unit)}' is not a unit of {dimension.Name()}", Expected(dimension));
        string? nearest = NearestName.Of(unit, SpellingTable.All.Where(u => u.Dimension == dimension).SelectMany(u => u.Spellings));
        return new QuantityFault($"unknown unit '{Quote.Of(unit)}'", Expected(dimension), nearest);
    }

    private static string Expected(Dimension dimension) => dimension == Dimension.Ratio
        ? "accepted: a ratio such as 0.8, 80 % or 4/5"
        : $"accepted for {dimension.Name()}: {string.Join(", ", SpellingTable.Accepted(dimension))}";
}
