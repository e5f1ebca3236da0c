using ColdSim.Model.Engine;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;
using MathNet.Numerics.Statistics;

namespace ColdSim.Planning.Ensemble;

/// <summary>The chance that a scenario holds, by many runs of it.</summary>
public sealed record ChanceReport
{
    // Any night that fails is worse than any that holds, however little is left.
    private const double Failing = -1e9;

    /// <summary>The scenario that was run.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The run without errors.</summary>
    public required RunReport Plain { get; init; }

    /// <summary>Members requested.</summary>
    public required int Asked { get; init; }

    /// <summary>Members that are counted; fewer than requested where the run was interrupted.</summary>
    public required int Done { get; init; }

    /// <summary>What the random numbers start from; null where the members are years.</summary>
    public required int? Seed { get; init; }

    /// <summary>The years that the members are; empty for an ensemble of errors.</summary>
    public required IReadOnlyList<int> Years { get; init; }

    /// <summary>The years of the record that could not be run, in order; empty for an ensemble of errors.</summary>
    public IReadOnlyList<YearLeftOut> YearsLeftOut { get; init; } = [];

    /// <summary>Whether the record is a typical year, its months picked from several years for being usual.</summary>
    public bool IsTypicalYear { get; init; }

    /// <summary>Members that hold all nights.</summary>
    public required Proportion AllNights { get; init; }

    /// <summary>On which side of the wanted chance that is; null where the number of members was given.</summary>
    public SequentialDecision? Decision { get; init; }

    /// <summary>Night by night.</summary>
    public required IReadOnlyList<NightChance> Nights { get; init; }

    /// <summary>When it is dry, counted over all members; an end that lies past the run is null.</summary>
    public required Spread<DateTimeOffset?> Dry { get; init; }

    /// <summary>Members that run dry.</summary>
    public required Proportion RunsDry { get; init; }

    /// <summary>What matters, the most first; empty where nothing differs.</summary>
    public required IReadOnlyList<Influence> Influences { get; init; }

    /// <summary>The scenario's options, in its order.</summary>
    public required IReadOnlyList<OptionChance> Options { get; init; }

    /// <summary>Hour by hour.</summary>
    public required IReadOnlyList<FanPoint> Fan { get; init; }

    /// <summary>How well energy and mass close in the worst of all members.</summary>
    public required LedgerBalance Ledger { get; init; }

    /// <summary>Whether it was interrupted.</summary>
    public bool IsPartial => Done < Asked;

    /// <summary>Whether the scenario without changes reaches the wanted chance.</summary>
    public bool MeetsWantedChance => AllNights.Chance_frac >= Scenario.WantedChance_frac;

    /// <summary>The cheapest option that reaches the wanted chance; where none of those has a price, the first; null where there is none.</summary>
    public OptionChance? Cheapest => Options.Where(o => o.AllNights.Chance_frac >= Scenario.WantedChance_frac)
        .OrderBy(o => o.Cost ?? double.PositiveInfinity).FirstOrDefault();

    internal static ChanceReport Of(
        Scenario scenario, RunReport plain, int asked, MemberTable table, IReadOnlyList<int> done, IReadOnlyList<OptionChance> options,
        IReadOnlyList<FanPoint> fan)
    {
        LeanRun[] runs = [.. done.Select(table.Run)];
        double[] dry_s = [.. runs.Select(DryTime_s).Order()];
        return new ChanceReport
        {
            Scenario = scenario,
            Plain = plain,
            Asked = asked,
            Done = done.Count,
            Seed = null,
            Years = [],
            AllNights = new Proportion(runs.Count(r => r.Holds), runs.Length),
            Nights = [.. plain.Nights.Select((night, n) => ChanceOfNight(night, n, runs))],
            Dry = new(At(scenario, dry_s, 0.1), At(scenario, dry_s, 0.5), At(scenario, dry_s, 0.9)),
            RunsDry = new Proportion(dry_s.Count(double.IsFinite), runs.Length),
            Influences = InfluencesOf(runs, table, done),
            Options = options,
            Fan = fan,
            Ledger = table.Ledger!.Value,
        };
    }

    private static NightChance ChanceOfNight(NightReport night, int n, LeanRun[] runs)
    {
        double[] left_kg = [.. runs.Where(r => n < r.Nights.Count).Select(r => r.Nights[n].LeftAtDawn_kg).Where(double.IsFinite).Order()];
        return new NightChance(
            night,
            new Proportion(runs.Count(r => n < r.Nights.Count && r.Nights[n].Verdict == Verdict.Holds), runs.Length),
            left_kg.Length == 0 ? null : new(Percentile(left_kg, 0.1), Percentile(left_kg, 0.5), Percentile(left_kg, 0.9)));
    }

    private static double DryTime_s(LeanRun run)
        => run.Nights.Select(n => n.Dry_s).Where(double.IsFinite).DefaultIfEmpty(double.PositiveInfinity).First();

    private static DateTimeOffset? At(Scenario scenario, double[] sorted_s, double part)
        => Percentile(sorted_s, part) is var time_s && double.IsFinite(time_s) ? scenario.Start.AddSeconds(time_s) : null;

    private static IReadOnlyList<Influence> InfluencesOf(LeanRun[] runs, MemberTable table, IReadOnlyList<int> done)
    {
        double[] went = Went(runs);
        (Uncertainty Of, double Correlation)[] all =
        [
            .. Enum.GetValues<Uncertainty>()
                .Select(u => (u, Correlation.Spearman([.. done.Select(i => table.Drawn(i, u))], went)))
                .Where(x => double.IsFinite(x.Item2)),
        ];
        double squares = all.Sum(x => x.Correlation * x.Correlation);
        return squares > 0
            ? [.. all.OrderByDescending(x => Math.Abs(x.Correlation)).Select(x => new Influence(x.Of, x.Correlation, x.Correlation * x.Correlation / squares))]
            : [];
    }

    // How well each member went: by what is left where it holds, by its place on the scale of harm where it does not.
    private static double[] Went(LeanRun[] runs)
    {
        Harm[] harms = [.. runs.Select(r => r.Nights.Aggregate(Harm.None, (sum, night) => sum + night.Harm))];
        int[] failed = [.. Enumerable.Range(0, runs.Length).Where(i => !runs[i].Holds)];
        Array.Sort(failed, (a, b) => HarmOrder.Only.Compare(harms[a], harms[b]));
        double[] went = [.. runs.Select(r => r.Holds ? r.Nights[^1].LeftAtEnd_kg : Failing)];
        for (int i = 1, place = 0; i < failed.Length; i++)
        {
            if (HarmOrder.Only.Compare(harms[failed[i]], harms[failed[i - 1]]) != 0) place = i;
            went[failed[i]] = Failing - place;
        }

        return went;
    }

    /// <summary>The smallest of the sorted values that at least a fraction of all do not exceed; NaN without values.</summary>
    internal static double Percentile(double[] sorted, double part_frac) => sorted.Length == 0
        ? double.NaN
        : sorted[Math.Clamp((int)Math.Ceiling(part_frac * sorted.Length - 1e-9) - 1, 0, sorted.Length - 1)];
}

/// <summary>The chance of one night.</summary>
/// <param name="Night">The night of the run without errors.</param>
/// <param name="Holds">Members in which it holds.</param>
/// <param name="LeftAtDawn_kg">Propane left at dawn; null where the run does not reach it. [kg]</param>
public sealed record NightChance(NightReport Night, Proportion Holds, Spread<double>? LeftAtDawn_kg);

/// <summary>How much something that is not known decides how it goes.</summary>
/// <param name="Of">What is not known.</param>
/// <param name="Correlation">Spearman's rank correlation with how well it goes.</param>
/// <param name="Share_frac">Its square, as a part of the sum of all squares.</param>
public sealed record Influence(Uncertainty Of, double Correlation, double Share_frac);

/// <summary>The chance of an option, with the scenario's own random numbers.</summary>
/// <param name="Option">The option.</param>
/// <param name="AllNights">Members in which all nights hold.</param>
/// <param name="Cost">What it costs in the run without errors, as in a comparison; null where nothing has a price.</param>
public sealed record OptionChance(ComparedOption Option, Proportion AllNights, double? Cost);
