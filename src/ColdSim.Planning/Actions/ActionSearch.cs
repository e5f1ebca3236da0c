using ColdSim.Planning.Compare;
using ColdSim.Planning.Nights;

namespace ColdSim.Planning.Actions;

/// <summary>Finds the least amounts of actions with which a whole run holds, each tried by running everything again.</summary>
/// <param name="scenario">A scenario that does not hold.</param>
/// <param name="finished">Called after every run; may be called from several threads at once.</param>
/// <param name="cancel">Stops all runs.</param>
internal sealed class ActionSearch(Scenario scenario, Action? finished, CancellationToken cancel)
{
    // Where to look is found with steps three times as long; what is said is confirmed with the scenario's own.
    private const double Coarse_factor = 3;

    // Half of a 100 Ah lead battery at 12 V a night; common practice, no source.
    private const double BatteryNight_J = 600 * 3600;

    /// <summary>Tries one action: the least amount that holds, or how the furthest fails.</summary>
    public PlannedAction Single(CandidateAction action)
    {
        int last = action.Amounts.Count - 1;
        TrialOutcome furthest = Whole(action.Build(scenario, action.Amounts[last]));
        (int place, TrialOutcome outcome) = furthest.Holds
            ? Least(last, furthest, at => action.Build(scenario, action.Amounts[at]))
            : (last, furthest);
        return Result([action.Change(place)], action.Build(scenario, action.Amounts[place]), outcome);
    }

    /// <summary>Tries two actions together with the furthest amount of each.</summary>
    public PlannedAction Furthest(CandidateAction one, CandidateAction other)
    {
        int a = one.Amounts.Count - 1, b = other.Amounts.Count - 1;
        Scenario both = Both(one, a, other, b);
        return Result([one.Change(a), other.Change(b)], both, Whole(both));
    }

    /// <summary>Finds the least amounts of two actions that hold together with their furthest: the second's first, because the first disturbs less.</summary>
    public PlannedAction Pair(CandidateAction one, CandidateAction other, PlannedAction furthest)
    {
        int a = one.Amounts.Count - 1, b = other.Amounts.Count - 1;
        TrialOutcome outcome = Whole(furthest.Scenario);
        (b, outcome) = Least(b, outcome, at => Both(one, one.Amounts.Count - 1, other, at));
        (a, outcome) = Least(a, outcome, at => Both(one, at, other, b));
        return Result([one.Change(a), other.Change(b)], Both(one, a, other, b), outcome);
    }

    private Scenario Both(CandidateAction one, int a, CandidateAction other, int b)
        => other.Build(one.Build(scenario, one.Amounts[a]), other.Amounts[b]);

    // Places in the list of amounts: the last is known to hold, and the one before the first is the scenario as it is.
    private (int Place, TrialOutcome Outcome) Least(int last, TrialOutcome furthest, Func<int, Scenario> build)
    {
        int no = -1, yes = last;
        while (yes - no > 1)
        {
            int middle = no + (yes - no) / 2;
            Scenario tried = build(middle);
            if (Run(tried with { Step_s = Coarse_factor * tried.Step_s }).Holds) yes = middle;
            else no = middle;
        }

        TrialOutcome outcome = yes == last ? furthest : Run(build(yes));
        while (!outcome.Holds)
        {
            yes++;
            outcome = yes == last ? furthest : Run(build(yes));
        }

        while (yes > 0 && Run(build(yes - 1)) is { Holds: true } less) (yes, outcome) = (yes - 1, less);
        return (yes, outcome);
    }

    private TrialOutcome Run(Scenario tried)
    {
        TrialOutcome outcome = TrialOutcome.WhileItHolds(tried, cancel);
        finished?.Invoke();
        return outcome;
    }

    private TrialOutcome Whole(Scenario tried)
    {
        TrialOutcome outcome = TrialOutcome.Of(tried, cancel);
        finished?.Invoke();
        return outcome;
    }

    private static PlannedAction Result(IReadOnlyList<ActionChange> changes, Scenario with, TrialOutcome outcome) => new()
    {
        Changes = changes,
        Scenario = with,
        Holds = outcome.Holds,
        FailsBy = outcome.Verdict,
        FailsAt = outcome.FirstFailure,
        StoppedByCylinder = outcome.IsCutShort,
        Harm = outcome.Harm,
        LeftAtEnd_kg = outcome.LeftAtEnd_kg,
        InsideLow_K = outcome.InsideLow_K,
        Blanket_J = outcome.Blanket_J,
        NeedsShorePower = with.Rig is { Power: null, Site.Hookup: false } && outcome.Blanket_J > BatteryNight_J * outcome.Nights,
        IsOnGround = new ComparedOption("", with).IsOnGround,
    };
}
