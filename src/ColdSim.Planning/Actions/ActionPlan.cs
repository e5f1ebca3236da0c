using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Actions;

/// <summary>What a person can do about a run, each action found by running everything again and judged by every night of the run.</summary>
public sealed record ActionPlan
{
    private const int MostInPairs = 5, MostPairs = 3;

    /// <summary>The single actions, those that hold and those that do not, the least intrusive first.</summary>
    public IReadOnlyList<PlannedAction> Singles { get; init; } = [];

    /// <summary>Pairs that hold; looked for only where no single action holds.</summary>
    public IReadOnlyList<PlannedAction> Pairs { get; init; } = [];

    /// <summary>By when to leave or to plug in; null where something holds.</summary>
    public DateTimeOffset? LeaveBefore { get; init; }

    /// <summary>What the run can still bear; null where it does not hold.</summary>
    public SpareMargin? Spare { get; init; }

    /// <summary>The actions that hold: the single ones, or the pairs where there is none; on board before bought.</summary>
    public IReadOnlyList<PlannedAction> Holding => [.. Singles.Where(a => a.Holds).Concat(Pairs)];

    /// <summary>How badly the run goes as it is.</summary>
    public Harm AsItIs { get; init; } = Harm.None;

    /// <summary>Where nothing holds: the single action with the least harm; null where something holds, or where none does less harm than nothing.</summary>
    public PlannedAction? LeastHarmful => Holding.Count > 0 ? null
        : Singles.Where(a => !a.StoppedByCylinder && HarmOrder.Only.Compare(a.Harm, AsItIs) < 0)
            .OrderBy(a => a.Harm, HarmOrder.Only).ThenByDescending(a => a.FailsAt).FirstOrDefault();

    /// <summary>Finds what to do about a run, or, where it holds, what it can still bear.</summary>
    /// <param name="report">The run.</param>
    /// <param name="grid">The amounts that the person can set or buy.</param>
    /// <param name="finished">Called after every run; may be called from several threads at once.</param>
    /// <param name="workers">How many runs at once; null takes one for each processor. The outcome does not depend on it.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="LedgerOpenException">The ledger of a run does not close.</exception>
    public static ActionPlan Of(
        RunReport report, AmountGrid grid, Action? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(grid);
        Scenario scenario = report.Scenario;
        if (report.End is RunEnd.LiquidFull or RunEnd.ReliefPressure)
            return new ActionPlan();
        if (report.Summary.Verdict == Verdict.Holds)
            return new ActionPlan { Spare = SpareMargin.Of(scenario, grid, finished, workers, cancel) };

        CandidateAction[] candidates = [.. Candidates(report, grid)];
        ActionSearch search = new(scenario, finished, cancel);
        PlannedAction[] singles = ParallelMap.Of(candidates.Length, i => search.Single(candidates[i]), workers, cancel);
        ActionPlan plan = new() { Singles = singles, AsItIs = report.Summary.Harm };
        if (singles.Any(a => a.Holds))
            return plan;
        plan = plan with { Pairs = PairsOf(candidates, singles, search, workers, cancel) };
        return plan.Pairs.Count > 0 ? plan : plan with { LeaveBefore = Departure.Before(scenario, report.Summary.FirstFailure ?? scenario.Start) };
    }

    /// <summary>The actions to try, in the order in which they are proposed.</summary>
    internal static IEnumerable<CandidateAction> Candidates(RunReport report, AmountGrid grid)
    {
        bool Fails(params ReadOnlySpan<Verdict> causes)
        {
            foreach (NightReport night in report.Nights)
            {
                if (causes.Contains(night.Verdict)) return true;
            }

            return false;
        }

        // More gas does not fill a battery, warm a pipe or mend a furnace.
        Scenario scenario = report.Scenario;
        bool gas = Fails(Verdict.GasShort, Verdict.GasGone), power = Fails(Verdict.BatteryFlat);
        IEnumerable<CandidateAction> all = OnBoardActions.Warmth(scenario);
        if (gas || power || Fails(Verdict.FurnaceTooSmall)) all = all.Concat(OnBoardActions.SetPoints(scenario, grid));
        if (gas) all = all.Concat(OnBoardActions.Gas(scenario)).Concat(BoughtActions.Gas(scenario, grid));
        if (power) all = all.Concat(PowerActions.Battery(scenario));
        all = all.Concat(PowerActions.ShorePower(scenario));
        return all.Where(a => a.Amounts.Count > 0).OrderBy(a => a.Kind);
    }

    private static PlannedAction[] PairsOf(
        CandidateAction[] candidates, PlannedAction[] singles, ActionSearch search, int? workers, CancellationToken cancel)
    {
        int[] best = [.. Enumerable.Range(0, singles.Length).Where(i => !singles[i].StoppedByCylinder)
            .OrderBy(i => singles[i].Harm, HarmOrder.Only).Take(MostInPairs).Order()];
        (int One, int Other)[] pairs = [.. best.SelectMany(i => best.Where(j => j > i && GoTogether(candidates[i].Kind, candidates[j].Kind)).Select(j => (i, j)))];
        PlannedAction[] furthest = ParallelMap.Of(
            pairs.Length, i => search.Furthest(candidates[pairs[i].One], candidates[pairs[i].Other]), workers, cancel);
        int[] hold = [.. Enumerable.Range(0, pairs.Length).Where(i => furthest[i].Holds).OrderBy(i => candidates[pairs[i].Other].Kind).Take(MostPairs)];
        return ParallelMap.Of(
            hold.Length, i => search.Pair(candidates[pairs[hold[i]].One], candidates[pairs[hold[i]].Other], furthest[hold[i]]), workers, cancel);
    }

    // A larger cylinder comes full, and no more than two are carried.
    private static bool GoTogether(ActionKind one, ActionKind other)
        => !(IsOtherCylinder(other) && (IsOtherCylinder(one) || one == ActionKind.TopUp))
            && (one, other) is not (ActionKind.CylinderFirst, ActionKind.BothOpen or ActionKind.CylinderFirst);

    private static bool IsOtherCylinder(ActionKind kind) => kind is ActionKind.SecondChangeover or ActionKind.SecondOpen or ActionKind.Size;
}
