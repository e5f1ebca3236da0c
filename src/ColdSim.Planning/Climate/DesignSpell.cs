using System.Globalization;

namespace ColdSim.Planning.Climate;

/// <summary>A spell of one or more nights picked from a record by how rarely there is a colder one.</summary>
/// <param name="Spell">The spell.</param>
/// <param name="Rank">1 for the coldest of those it was picked from.</param>
/// <param name="Of">How many those are.</param>
/// <param name="Rule">How it was picked, in words.</param>
public sealed record DesignSpell(ColdSpell Spell, int Rank, int Of, string Rule)
{
    // November to March has 151 nights; a few may be missing.
    private const int LeastNights = 140;

    /// <summary>The coldest spell of the record.</summary>
    /// <param name="spells">At least one, all of one length.</param>
    public static DesignSpell Worst(IReadOnlyList<ColdSpell> spells)
    {
        ColdSpell coldest = Ranked(spells)[0];
        return new(coldest, 1, spells.Count, $"the coldest {Name(coldest)} of the record");
    }

    /// <summary>
    /// The spell that is colder than a part of all spells; the colder one where it falls between two, and the coldest where the record has
    /// too few for that part.
    /// </summary>
    /// <param name="spells">At least one, all of one length.</param>
    /// <param name="percent">Such as 99, from 0 to below 100.</param>
    public static DesignSpell Percentile(IReadOnlyList<ColdSpell> spells, double percent)
    {
        IReadOnlyList<ColdSpell> ranked = Ranked(spells);
        // The slack is for 99.9 %, which is no round number in binary.
        int colder = (int)Math.Floor((ranked.Count * (100 - percent) / 100) + 1e-9);
        int rank = Math.Clamp(colder, 1, ranked.Count);
        ColdSpell spell = ranked[rank - 1];

        // Of few spells no round part can be warmer.
        double warmer = 100.0 * ranked.Count(s => s.Mean_K > spell.Mean_K) / ranked.Count;
        string all = spell.Nights == 1 ? "nights" : string.Create(CultureInfo.InvariantCulture, $"spells of {spell.Nights} nights");
        FormattableString rule = colder >= 1 ? $"{warmer:0.##} % of the record's {all} are warmer"
            : ranked.Count == 1 ? (FormattableString)$"the record's only {Name(spell)} is used for p{percent:0.###}"
            : $"the record has {ranked.Count} {all}, too few for p{percent:0.###}, so its coldest is used; {warmer:0.##} % are warmer";
        return new DesignSpell(spell, rank, ranked.Count, FormattableString.Invariant(rule));
    }

    /// <summary>
    /// The coldest spell that a winter brings once in so many years, by the rank r of the winters' coldest spells: (winters + 1)/r years
    /// (Weibull's plotting position). Null where the record is too short for it.
    /// </summary>
    /// <param name="spells">In order of time, all of one length.</param>
    /// <param name="years">1 or more.</param>
    /// <param name="winters">How many winters the record has whole.</param>
    public static DesignSpell? OnceIn(IReadOnlyList<ColdSpell> spells, int years, out int winters)
    {
        ArgumentNullException.ThrowIfNull(spells);
        ColdSpell[] coldest =
        [
            .. spells.Where(s => s.Evening.Month is >= 11 or <= 3).GroupBy(s => s.First.Winter).Where(w => w.Count() > LeastNights - w.First().Nights)
                .Select(w => w.MinBy(s => s.Mean_K)!).OrderBy(s => s.Mean_K),
        ];
        winters = coldest.Length;
        int rank = Math.Min((winters + 1) / years, winters);
        return rank < 1 ? null : new DesignSpell(
            coldest[rank - 1], rank, winters,
            FormattableString.Invariant($"the coldest {Name(coldest[rank - 1])} of a winter, colder ones once in {years} years, (winters + 1)/rank"));
    }

    private static string Name(ColdSpell spell) => spell.Nights == 1 ? "night" : string.Create(CultureInfo.InvariantCulture, $"spell of {spell.Nights} nights");

    private static IReadOnlyList<ColdSpell> Ranked(IReadOnlyList<ColdSpell> spells)
    {
        ArgumentNullException.ThrowIfNull(spells);
        return [.. spells.OrderBy(s => s.Mean_K).ThenBy(s => s.From)];
    }
}
