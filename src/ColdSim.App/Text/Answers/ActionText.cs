using ColdSim.Planning;
using ColdSim.Planning.Actions;

namespace ColdSim.App.Text.Answers;

/// <summary>What to do about a run, a line each.</summary>
internal static class ActionText
{
    private const string About =
        "Each was run again over all nights; the amounts are the least that hold, in steps that can be set or bought. {board} Only equipment listed for its "
        + "purpose, and nothing over a cylinder but a blanket listed for it. Where no battery is given, 600 Wh a night are assumed (common practice, no source).";

    /// <summary>What introduces the actions; empty where there are none.</summary>
    public static string Introduction(ActionPlan? plan)
    {
        if (plan is null or { Spare: not null } or { Singles.Count: 0, LeaveBefore: null })
            return "";
        if (plan.LeaveBefore is { } leave)
            return $"Do: leave or plug in before {ClockText.ShortDayClock(leave)}. Nothing that was tried holds, alone or in pairs.";
        string where = plan.Holding.Any(a => a.IsOnBoard) ? "" : " None of it is on board.";
        return (plan.Holding.Count, plan.Pairs.Count) switch
        {
            (1, 0) => $"Do this; it was run and holds.{where}",
            (_, 0) => $"Do one of these; each was run and holds.{where}",
            (_, 1) => $"Do both together; they were run and hold, and nothing alone does.{where}",
            _ => $"Do one of these pairs; each was run and holds, and nothing alone does.{where}",
        };
    }

    /// <summary>The actions that hold, the best first; where nothing does, the one with the least harm.</summary>
    public static IReadOnlyList<string> Lines(ActionPlan? plan, Scenario scenario, UnitStyle units)
    {
        if (plan is null)
            return [];
        return plan.LeastHarmful is { } least
            ? [$"Until then the least harm: {ActionWords.Line(least, scenario, units)}"]
            : [.. plan.Holding.Select(a => ActionWords.Line(a, scenario, units))];
    }

    /// <summary>What a run that holds can still bear, a sentence; empty where that is not known.</summary>
    public static string Spare(ActionPlan? plan, UnitStyle units)
    {
        if (plan?.Spare is not { } spare)
            return "";
        string? colder = spare.Colder_K is not { } kelvin ? null : kelvin < 0.1 ? "" : $"{units.WholeDifference(kelvin)} colder";
        string? less = spare.Less_kg is not { } kg ? null : kg < 0.1 ? "" : $"{UnitStyle.Number(units.MassIn(kg), units.IsUs ? 0 : 1)} {units.MassUnit} less gas";
        return (colder, less) switch
        {
            ("", "") => $"It would not hold {units.WholeDifference(units.IsUs ? 1 / 1.8 : 1)} colder, nor with {(units.IsUs ? "1 lb" : "0.5 kg")} less gas.",
            ("" or null, { Length: > 0 } only) => $"It would still hold with {only}.",
            ({ Length: > 0 } only, "" or null) => $"It would still hold {only}.",
            ({ Length: > 0 }, { Length: > 0 }) => $"It would still hold {colder}, or with {less}.",
            _ => "",
        };
    }

    /// <summary>Everything that was tried, what holds before what does not.</summary>
    public static TextSection? Section(ActionPlan? plan, Scenario scenario, UnitStyle units)
    {
        if (plan is not { Singles.Count: > 0 })
            return null;
        IEnumerable<PlannedAction> all = plan.Holding.Concat(plan.Singles.Where(a => !a.Holds));
        string[] leave = plan.LeaveBefore is { } at ? [$"Leave or plug in before {ClockText.ShortDayClock(at)}."] : [];
        IReadOnlyList<string> points = RunText.Points([.. leave, .. all.Select(a => ActionWords.Line(a, scenario, units))]);
        string about = About.Replace("{board}", BoardRule.Actions(scenario, units), StringComparison.Ordinal);
        return new("What to do, and what would not help", [.. points, "", .. Wrap.Lines(about)]);
    }
}
