namespace ColdSim.Planning.Climate;

/// <summary>One or more nights of a record in a row, from noon to noon.</summary>
/// <param name="First">The first night.</param>
/// <param name="Last">The last night; the first again where the spell is one night.</param>
/// <param name="Nights">How many nights it has.</param>
/// <param name="Mean_K">Mean air temperature over all of it. [K]</param>
/// <param name="Low_K">Lowest air temperature. [K]</param>
/// <param name="LowAt">When that was.</param>
public sealed record ColdSpell(ColdNight First, ColdNight Last, int Nights, double Mean_K, double Low_K, DateTimeOffset LowAt)
{
    /// <summary>The noon before.</summary>
    public DateTimeOffset From => First.From;

    /// <summary>The noon after.</summary>
    public DateTimeOffset To => Last.To;

    /// <summary>The calendar day on whose evening it begins.</summary>
    public DateOnly Evening => First.Evening;

    /// <summary>Whether it shares a night with another.</summary>
    public bool Overlaps(ColdSpell other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return From < other.To && other.From < To;
    }
}

/// <summary>The spells of a record.</summary>
public static class ColdSpells
{
    /// <summary>Every spell of so many nights in a row, in order of time; each begins a day after the one before it.</summary>
    /// <param name="nights">The record's whole nights, in order of time.</param>
    /// <param name="length">Nights of a spell.</param>
    public static IReadOnlyList<ColdSpell> Of(IReadOnlyList<ColdNight> nights, int length)
    {
        ArgumentNullException.ThrowIfNull(nights);
        ArgumentOutOfRangeException.ThrowIfLessThan(length, 1);
        List<ColdSpell> spells = [];
        for (int first = 0; first + length <= nights.Count; first++)
        {
            // A night that is missing from the record parts two spells.
            if (nights[first + length - 1].To - nights[first].From == TimeSpan.FromDays(length))
                spells.Add(Of(nights, first, length));
        }

        return spells;
    }

    private static ColdSpell Of(IReadOnlyList<ColdNight> nights, int first, int length)
    {
        double sum_K = 0;
        ColdNight coldest = nights[first];
        for (int i = first; i < first + length; i++)
        {
            sum_K += nights[i].Mean_K;
            coldest = nights[i].Low_K < coldest.Low_K ? nights[i] : coldest;
        }

        return new(nights[first], nights[first + length - 1], length, sum_K / length, coldest.Low_K, coldest.LowAt);
    }
}
