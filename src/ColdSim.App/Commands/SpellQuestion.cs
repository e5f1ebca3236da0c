using System.Globalization;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Commands;

/// <summary>Which nights of a record are asked for.</summary>
/// <param name="Option">The option that asks.</param>
/// <param name="Nights">How many nights in a row.</param>
/// <param name="Rule">How one spell is picked; null for a list of the coldest.</param>
internal sealed record SpellQuestion(string Option, int Nights, SpellRule? Rule)
{
    /// <summary>The spells of that length; at least one.</summary>
    /// <exception cref="CommandFault">The record has none.</exception>
    public IReadOnlyList<ColdSpell> Spells(IReadOnlyList<ColdNight> nights)
    {
        IReadOnlyList<ColdSpell> spells = ColdSpells.Of(nights, Nights);
        return spells.Count > 0 ? spells : throw CommandFault.Input(
            Nights == 1 ? $"coldsim: {Option}: there is no whole night, noon to noon, in the rows"
            : string.Create(CultureInfo.InvariantCulture, $"coldsim: {Option}: the rows have {nights.Count} whole {(nights.Count == 1 ? "night" : "nights")}, noon to noon; {Nights} in a row are asked for"));
    }
}

/// <summary>How a spell is picked: <c>worst</c>, <c>p99</c> or <c>1-in-10</c>.</summary>
/// <param name="Percent">Of spells that are warmer.</param>
/// <param name="Years">Of which it is the worst.</param>
internal sealed record SpellRule(double? Percent, int? Years)
{
    public const string Accepted = "worst, p99 (from p50 to p99.99) or 1-in-10 (from 1-in-2 to 1-in-100)";

    public static SpellRule? Read(string text)
    {
        text = text.Trim().ToLowerInvariant();
        if (text == "worst")
            return new SpellRule(null, null);
        if (text.StartsWith('p')
            && double.TryParse(text.AsSpan(1), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent) && percent is >= 50 and <= 99.99)
            return new SpellRule(percent, null);
        return text.StartsWith("1-in-", StringComparison.Ordinal)
            && int.TryParse(text.AsSpan(5), NumberStyles.None, CultureInfo.InvariantCulture, out int years) && years is >= 2 and <= 100
            ? new SpellRule(null, years) : null;
    }

    /// <summary>The spell of a record.</summary>
    /// <param name="spells">All of the record, of one length.</param>
    /// <param name="option">The option that asks.</param>
    /// <param name="typicalYear">Whether the record is a year that is put together.</param>
    public DesignSpell Pick(IReadOnlyList<ColdSpell> spells, string option, bool typicalYear)
    {
        if (Percent is { } percent)
            return DesignSpell.Percentile(spells, percent);
        if (Years is not { } years)
            return DesignSpell.Worst(spells);
        return DesignSpell.OnceIn(spells, years, out int winters) ?? throw CommandFault.Input(string.Create(
            CultureInfo.InvariantCulture, $"coldsim: {option}: 1-in-{years} takes a record of at least {years - 1} whole winters, November to March; this one has {winters}{(typicalYear ? ", and is a typical year, whose months were picked for being usual" : "")}"));
    }
}
