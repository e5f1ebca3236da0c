using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios;

/// <summary>Prices such as "1.20 per lb", "$4.35/gal" or "24 per exchange".</summary>
internal static class PriceText
{
    /// <summary>A price; null where it is absent or faulty.</summary>
    /// <param name="section">The table.</param>
    /// <param name="key">The key.</param>
    public static Price? Get(this SectionReader section, PriceKey key)
    {
        string accepted = "accepted: a price such as \"1.20 per lb\", \"2.60 per kg\" or \"$4.35/gal\"" + (key.Each ? ", or \"24 per exchange\"" : "");
        switch (section.Value(key))
        {
            case null: return null;
            case TomlText text when Read(text.Value, key.Each) is { } price: return price;
            case TomlText text:
                section.Reading.Report(
                    text.Place, $"'{key.Name}' is \"{Quote.Of(text.Value)}\"" + (DecimalComma(text.Value) is { } comma ? $": {comma}" : ""), accepted);
                return null;
            case TomlNumber number:
                section.Reading.Report(number.Place, $"'{key.Name}' is {number.Written}, which does not say for how much gas", $"write \"{number.Written} per gal\" or \"{number.Written} per kg\"; {accepted}");
                return null;
            case { } other:
                section.Reading.Report(other.Place, $"'{key.Name}' is {other.Kind}", accepted);
                return null;
        }
    }

    /// <summary>What is written before a sum of money; null where it is absent or faulty.</summary>
    public static string? Currency(this SectionReader section, TextKey key)
    {
        if (section.Get(key) is not { } text)
            return null;
        if (text.Trim().Length is >= 1 and <= 4 && !text.Any(c => char.IsControl(c) || char.IsDigit(c)))
            return text.Trim();
        section.Reading.Report(section.ValuePlace(key), $"'{key.Name}' is \"{Quote.Of(text)}\"", "accepted: 1 to 4 characters without figures, such as \"$\" or \"EUR\"");
        return null;
    }

    /// <summary>A price as it is written; null where it is none. The sign of money may be before or behind the sum; 'currency' says which it is.</summary>
    /// <param name="text">Such as "$4.35/gal".</param>
    /// <param name="each">Whether it may be for an exchange.</param>
    public static Price? Read(string text, bool each)
    {
        string[] parts = text.Split(text.Contains(" per ", StringComparison.OrdinalIgnoreCase) ? " per " : "/", StringSplitOptions.TrimEntries);
        if (parts.Length != 2 || !NumberText.TryRead(WithoutSign(parts[0]), out double money, out string rest, out _) || rest.Length > 0 || money is < 0 or > PriceKey.Most)
            return null;
        if (each && parts[1].Equals("exchange", StringComparison.OrdinalIgnoreCase))
            return Price.PerExchange(money);
        string one = string.Create(CultureInfo.InvariantCulture, $"1 {parts[1]}");
        if (SiText.Read(one, Dimension.Mass, out double mass_kg) is null)
            return Price.PerMass(money, mass_kg);
        return SiText.Read(one, Dimension.Volume, out double volume_m3) is null ? Price.PerVolume(money, volume_m3) : null;
    }

    private static string WithoutSign(string money)
    {
        if (money.Length > 0 && IsSign(money[0]))
            return money[1..].TrimStart();
        return money.Length > 0 && IsSign(money[^1]) ? money[..^1].TrimEnd() : money;
    }

    private static bool IsSign(char c) => char.GetUnicodeCategory(c) == UnicodeCategory.CurrencySymbol;

    private static string? DecimalComma(string text)
    {
        string money = WithoutSign(text.Split(text.Contains(" per ", StringComparison.OrdinalIgnoreCase) ? " per " : "/")[0].Trim());
        return !NumberText.TryRead(money, out _, out _, out string fault) && NumberText.IsDecimalComma(fault) ? fault : null;
    }
}
