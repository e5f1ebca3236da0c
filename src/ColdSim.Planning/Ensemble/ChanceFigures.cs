using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Ensemble;

/// <summary>Counts and sorts what the members came to, always in the order of their places.</summary>
internal static class ChanceFigures
{
    // Any night that fails is worse than any that holds, however little is left.
    private const double Failing = -1e9;

    public static ChanceReport Of(
        Scenario scenario, RunReport plain, int asked, MemberTable table, IReadOnlyList<int> done, IReadOnlyList<OptionChance> options,
        IReadOnlyList<FanPoint> fan)
    {
        LeanRun[] runs = [.. done.Select(table.Run)];
        double[] dry_s = [.. runs.Select(Dry_s).Order()];
        return new ChanceReport
        {
            Scenario = scenario,
            Plain = plain,
            Asked = asked,
            Done = done.Count,
            Seed = null,
            Years = [],
            AllNights = new Proportion(runs.Count(r => r.Holds), runs.Length),
            Nights = [.. plain.Nights.Select((night, n) => Night(night, n, runs))],
            Dry = new(At(scenario, dry_s, 0.1), At(scenario, dry_s, 0.5), At(scenario, dry_s, 0.9)),
            RunsDry = new Proportion(dry_s.Count(double.IsFinite), runs.Length),
            Influences = Influences(runs, table, done),
            Options = options,
            Fan = fan,
            Ledger = table.Ledger!.Value,
        };
    }

    private static NightChance Night(NightReport night, int n, LeanRun[] runs)
    {
        double[] left_kg = [.. runs.Where(r => n < r.Nights.Count).Select(r => r.Nights[n].LeftAtDawn_kg).Where(double.IsFinite).Order()];
        return new NightChance(
            night,
            new Proportion(runs.Count(r => n < r.Nights.Count && r.Nights[n].Verdict == Verdict.Holds), runs.Length),
            left_kg.Length == 0 ? null : new(Ranks.Percentile(left_kg, 0.1), Ranks.Percentile(left_kg, 0.5), Ranks.Percentile(left_kg, 0.9)));
    }

    private static double Dry_s(LeanRun run)
        => run.Nights.Select(n => n.Dry_s).Where(double.IsFinite).DefaultIfEmpty(double.PositiveInfinity).First();

    private static DateTimeOffset? At(Scenario scenario, double[] sorted_s, double part)
        => Ranks.Percentile(sorted_s, part) is var time_s && double.IsFinite(time_s) ? scenario.Start.AddSeconds(time_s) : null;

    private static IReadOnlyList<Influence> Influences(LeanRun[] runs, MemberTable table, IReadOnlyList<int> done)
    {
        double[] went = [.. runs.Select(Went)];
        (Uncertainty Of, double Correlation)[] all =
        [
            .. Enum.GetValues<Uncertainty>()
                .Select(u => (u, Ranks.Correlation([.. done.Select(i => table.Drawn(i, u))], went)))
                .Where(x => double.IsFinite(x.Item2)),
        ];
        double squares = all.Sum(x => x.Correlation * x.Correlation);
        return squares > 0
            ? [.. all.OrderByDescending(x => Math.Abs(x.Correlation)).Select(x => new Influence(x.Of, x.Correlation, x.Correlation * x.Correlation / squares))]
            : [];
    }

    // How well a member went: by what is left where it holds, by the time without gas or voltage where it does not.
    private static double Went(LeanRun run)
        => run.Holds ? run.Nights[^1].LeftAtEnd_kg : Failing - run.Nights.Sum(n => n.Short_s + n.VoltageGone_s);
}
