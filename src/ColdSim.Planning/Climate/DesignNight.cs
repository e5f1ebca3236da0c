namespace ColdSim.Planning.Climate;

/// <summary>A night picked from a record by how rarely there is a colder one.</summary>
/// <param name="Night">The night.</param>
/// <param name="Rank">1 for the coldest of those it was picked from.</param>
/// <param name="Of">How many those are.</param>
/// <param name="Rule">How it was picked, in words.</param>
public sealed record DesignNight(ColdNight Night, int Rank, int Of, string Rule)
{
    // November to March has 151 nights; a few may be missing.
    private const int LeastNights = 140;

    /// <summary>The coldest night of the record.</summary>
    /// <param name="nights">At least one.</param>
    public static DesignNight Worst(IReadOnlyList<ColdNight> nights)
        => new(Ranked(nights)[0], 1, nights.Count, "the coldest night of the record");

    /// <summary>
    /// The night that is colder than a part of all nights; the colder one where it falls between two, and the coldest where the record has
    /// too few nights for that part.
    /// </summary>
    /// <param name="nights">At least one.</param>
    /// <param name="percent">Such as 99, from 0 to below 100.</param>
    public static DesignNight Percentile(IReadOnlyList<ColdNight> nights, double percent)
    {
        IReadOnlyList<ColdNight> ranked = Ranked(nights);
        // The slack is for 99.9 %, which is no round number in binary.
        int colder = (int)Math.Floor((ranked.Count * (100 - percent) / 100) + 1e-9);
        int rank = Math.Clamp(colder, 1, ranked.Count);
        ColdNight night = ranked[rank - 1];

        // Of few nights no round part can be warmer.
        double warmer = 100.0 * ranked.Count(n => n.Mean_K > night.Mean_K) / ranked.Count;
        FormattableString rule = colder >= 1 ? $"{warmer:0.##} % of the record's nights are warmer"
            : ranked.Count == 1 ? (FormattableString)$"the record's only night is used for p{percent:0.###}"
            : $"the record has {ranked.Count} nights, too few for p{percent:0.###}, so its coldest is used; {warmer:0.##} % are warmer";
        return new DesignNight(night, rank, ranked.Count, FormattableString.Invariant(rule));
    }

    /// <summary>
    /// The coldest night that a winter brings once in so many years, by the rank r of the winters' coldest nights: (winters + 1)/r years
    /// (Weibull's plotting position). Null where the record is too short for it.
    /// </summary>
    /// <param name="nights">In order of time.</param>
    /// <param name="years">1 or more.</param>
    /// <param name="winters">How many winters the record has whole.</param>
    public static DesignNight? OnceIn(IReadOnlyList<ColdNight> nights, int years, out int winters)
    {
        ArgumentNullException.ThrowIfNull(nights);
        ColdNight[] coldest =
        [
            .. nights.Where(n => n.Evening.Month is >= 11 or <= 3).GroupBy(n => n.Winter).Where(w => w.Count() >= LeastNights)
                .Select(w => w.MinBy(n => n.Mean_K)!).OrderBy(n => n.Mean_K),
        ];
        winters = coldest.Length;
        int rank = Math.Min((winters + 1) / years, winters);
        return rank < 1 ? null : new DesignNight(
            coldest[rank - 1], rank, winters, FormattableString.Invariant($"the coldest night of a winter, colder ones once in {years} years, (winters + 1)/rank"));
    }

    private static IReadOnlyList<ColdNight> Ranked(IReadOnlyList<ColdNight> nights)
    {
        ArgumentNullException.ThrowIfNull(nights);
        return [.. nights.OrderBy(n => n.Mean_K).ThenBy(n => n.From)];
    }
}
