using ColdSim.Model.Engine;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Purchases;

/// <summary>How one set-up would do.</summary>
/// <param name="SetUp">The set-up.</param>
/// <param name="Limits">The coldest nights it is fed through.</param>
/// <param name="Days">Days that a filling lasts at each of the report's lows; 0 where it is not fed.</param>
/// <param name="Season">The record with it.</param>
public sealed record PurchaseRow(SetUp SetUp, ColdLimits Limits, IReadOnlyList<double> Days, SeasonPlay Season)
{
    /// <summary>Its place, from 1.</summary>
    public int Rank { get; init; }
}

/// <summary>Set-ups that can be bought, side by side for one rig and one weather record.</summary>
public sealed record PurchaseReport
{
    /// <summary>The rig and the record.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>What the rig burned.</summary>
    public required SeasonUse Season { get; init; }

    /// <summary>The lows for which days are told: those that nine, five and one in ten nights are colder than, warm first. [K]</summary>
    public required IReadOnlyList<double> Lows_K { get; init; }

    /// <summary>The set-ups, the best first.</summary>
    public required IReadOnlyList<PurchaseRow> Rows { get; init; }

    /// <summary>What one person carries. [kg]</summary>
    public required double Carries_kg { get; init; }

    /// <summary>What gas costs; null where it is not known.</summary>
    public Price? Price { get; init; }

    /// <summary>The best.</summary>
    public PurchaseRow Best => Rows[0];

    /// <summary>Ledgers of every run that the report rests on.</summary>
    public IEnumerable<LedgerBalance> Ledgers
        => Rows.SelectMany(r => r.Limits.Cells).Select(c => c.Ledger).OfType<LedgerBalance>().Prepend(Season.Ledger);

    /// <summary>Works it out; what comes out does not depend on how many set-ups at once.</summary>
    /// <param name="scenario">The rig, with a furnace and a coach, and a weather record.</param>
    /// <param name="setUps">What can be bought.</param>
    /// <param name="axis">The lows to try.</param>
    /// <param name="price">What gas costs; null takes the scenario's.</param>
    /// <param name="finished">Told of each set-up that is done.</param>
    /// <param name="workers">How many set-ups at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    public static PurchaseReport Of(
        Scenario scenario, IReadOnlyList<SetUp> setUps, LimitAxis axis, Price? price = null, IProgress<int>? finished = null,
            int? workers = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(setUps);
        SeasonUse season = SeasonUse.Of(scenario, cancel);
        double[] lows_K = [season.Low_K(0.9), season.Low_K(0.5), season.Low_K(0.1)];
        StandardNight night = new(scenario with { HeatStops = null });
        Price? gas = price ?? scenario.Prices.Gas;
        double carries_kg = scenario.Trip?.Carries_kg ?? Trip.UsualCarry_kg;
        PurchaseRow[] rows = ParallelMap.Of(
            setUps.Count,
            i =>
            {
                RigVariant variant = new(setUps[i].Blanket ? RigVariantKind.Blanket : RigVariantKind.Bare, setUps[i].Of(scenario.Rig),
                    AsItIs: false);
                ColdLimits limits = new(new LimitSearch(night, axis, variant, cancel).Column(ColdLimits.Fills, () => { }).Cells);
                finished?.Report(i);
                return new PurchaseRow(setUps[i], limits, [.. lows_K.Select(l => Days(season, setUps[i], limits, l))],
                    SeasonPlay.Of(season, setUps[i], limits, gas));
            },
            workers,
            cancel);
        return new()
        {
            Scenario = scenario,
            Season = season,
            Lows_K = lows_K,
            Rows = Ranked(rows, carries_kg),
            Carries_kg = carries_kg,
            Price = gas,
        };
    }

    private static double Days(SeasonUse season, SetUp setUp, ColdLimits limits, double low_K)
    {
        double needed_frac = limits.NeededFill_frac(low_K), day_kg = season.Day_kg(low_K);
        return needed_frac > 1 || day_kg <= 0 ? 0 : Math.Max(0, 1 - needed_frac) * setUp.LegalFill_kg / day_kg;
    }

    // Fed first; then what one person can carry; then no walks to a valve in the dark; then the fewest ways to the filler; then the
    // lightest and the plainest.
    private static PurchaseRow[] Ranked(PurchaseRow[] rows, double carries_kg) =>
    [
        .. rows.OrderBy(r => r.Season.ShortNights).ThenBy(r => r.SetUp.IsOnGround).ThenBy(r => r.SetUp.Lift_kg > carries_kg)
            .ThenBy(r => r.Season.Refills).ThenBy(r => r.SetUp is { Count: 2, Changeover: false }).ThenBy(r => r.SetUp.Blanket)
                .ThenBy(r => r.SetUp.Weight_kg)
            .Select((r, i) => r with { Rank = i + 1 }),
    ];
}
