namespace ColdSim.Planning.Climate;

/// <summary>The coldest spells of a record, none of which shares a night with another of its list.</summary>
/// <param name="Nights">Nights of each.</param>
/// <param name="ByMean">The coldest in the mean first.</param>
/// <param name="ByLow">The one with the coldest hour first.</param>
public sealed record ColdestSpells(int Nights, IReadOnlyList<ColdSpell> ByMean, IReadOnlyList<ColdSpell> ByLow)
{
    private const int Listed = 5;

    /// <summary>Finds them.</summary>
    /// <param name="spells">All of the record, of one length; at least one.</param>
    public static ColdestSpells Of(IReadOnlyList<ColdSpell> spells)
    {
        ArgumentNullException.ThrowIfNull(spells);
        return new(spells[0].Nights, Apart(spells.OrderBy(s => s.Mean_K)), Apart(spells.OrderBy(s => s.Low_K).ThenBy(s => s.Mean_K)));
    }

    private static List<ColdSpell> Apart(IEnumerable<ColdSpell> ranked)
    {
        List<ColdSpell> apart = [];
        foreach (ColdSpell spell in ranked)
        {
            if (apart.Count == Listed)
                break;
            if (!apart.Exists(spell.Overlaps))
                apart.Add(spell);
        }

        return apart;
    }
}
