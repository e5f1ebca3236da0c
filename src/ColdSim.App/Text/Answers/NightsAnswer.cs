using ColdSim.Planning;
using ColdSim.Planning.Advice;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.App.Text.Answers;

/// <summary>A run of one or more nights as an answer.</summary>
internal static class NightsAnswer
{
    /// <summary>The answer.</summary>
    /// <param name="run">The run.</param>
    /// <param name="advice">Why it fails and what to do; null where only the verdict is wanted.</param>
    /// <param name="units">The units to print.</param>
    public static Answer Of(RunReport run, RunAdvice? advice, UnitStyle units)
    {
        NightReport? failing = FirstFailing(run);
        return new()
        {
            Brief = Brief(run, failing, units),
            Verdict = Verdict(run, failing, units),
            Consequences = Consequences(run, failing, advice, units),
            Why = advice?.Explanation is { } why ? ReasonText.Of(why, units) : "",
            ToDo = ActionText.Introduction(advice?.Plan),
            Actions = ActionText.Lines(advice?.Plan, run.Scenario, units),
            Table = NightRows(run, units),
            AboutGuesses = GuessText.About,
            Guesses = advice is null ? [] : GuessText.Lines(advice.Guesses, run.Scenario, failing is null, units),
            Caution = CautionLine.Of(run, advice),
        };
    }

    /// <summary>The nights as a table: those that fail and the tightest before the others.</summary>
    public static AnswerTable NightRows(RunReport run, UnitStyle units)
    {
        FigureTable table = new(ReportTable.NightsOnScreen, units) { Context = FigureContext.Of(run.Scenario) };
        IReadOnlyList<string> lines = table.Lines(
            NightFigures.All, run.Nights, new FigureTable.Cells<NightReport>(new([""], Left: true), int.MaxValue, (n, _) => NightOutcome.Short(n)));
        int head = lines.Count - run.Nights.Count;
        return new([.. lines.Take(head)], [.. lines.Skip(head).Select((line, i) => new AnswerRow(line, Importance(run, i)))], hidden => More(run, hidden))
        {
            Title = $"{run.Scenario.Title}: {Setting(run, units)}",
        };
    }

    private static NightReport? FirstFailing(RunReport run) => run.Nights.FirstOrDefault(n => n.Verdict != Planning.Harms.Verdict.Holds);

    private static string Verdict(RunReport run, NightReport? failing, UnitStyle units)
    {
        if (failing is not null)
            return $"FAILS {ClockText.NightName(failing)}: {NightOutcome.Failure(failing, run, units)}.";
        if (NightSentence.WhyItEnds(run) is { } ends)
            return $"DOES NOT HOLD. {ends}";
        string which = run.Nights.Count switch { 1 => ClockText.NightName(run.Nights[0]), 2 => "both nights", var n => $"all {n} nights" };
        return $"HOLDS {which}: {LeftAtEnd(run, units)}{InsideNever(run, units)}.";
    }

    private static string LeftAtEnd(RunReport run, UnitStyle units)
    {
        NightReport last = run.Nights[^1];
        return last.LeftAtDawn is { } dawn
            ? $"{units.RoundMass(dawn.Kilograms)} left at {ClockText.Clock(run.Scenario.Criteria.Dawn)}{(run.Nights.Count == 1 ? "" : " of the last")}"
            : $"{units.RoundMass(last.LeftAtEnd.Kilograms)} left at {ClockText.Clock(last.To)}, where the run ends";
    }

    private static string InsideNever(RunReport run, UnitStyle units)
        => run.Summary.InsideLow is { } low ? $", inside {units.WholeTemperature(low.Kelvins)} at the coldest" : "";

    private static List<string> Consequences(RunReport run, NightReport? failing, RunAdvice? advice, UnitStyle units)
    {
        List<string> all = [];
        if (NightSentence.Hot(run, units) is { } hot)
            all.Add(hot);
        if (advice?.BelowMinimum is { } effect)
            all.Add(BelowMinimum(effect, units));
        if (failing is null)
            return [.. all.Append(ActionText.Spare(advice?.Plan, units)).Where(s => s.Length > 0)];
        int others = run.Nights.Count(n => n.Verdict != Planning.Harms.Verdict.Holds) - 1;
        string also = others switch
        {
            0 => "",
            1 => $"{ClockText.NightShort(run.Nights.Last(n => n.Verdict != Planning.Harms.Verdict.Holds))} fails too.",
            _ when others + 1 == run.Nights.Count => $"All {run.Nights.Count} nights fail.",
            _ => $"{others} more of the {run.Nights.Count} nights fail.",
        };
        return [.. all.Concat([NightOutcome.Inside(failing, units), NightOutcome.Water(failing), NightOutcome.Also(failing), also]).Where(s => s.Length > 0)];
    }

    private static string BelowMinimum(MinimumInletEffect effect, UnitStyle units)
    {
        string then = effect.Holds ? "it holds" : effect.FailsAt is { } at ? $"it fails from {ClockText.ShortDayClock(at)}" : "it fails";
        return $"This counts on gas below the regulator's minimum inlet ({units.Pressure(effect.MinimumInlet_Pa)}); without, {then}.";
    }

    private static string Brief(RunReport run, NightReport? failing, UnitStyle units)
    {
        if (failing is null)
        {
            return NightSentence.WhyItEnds(run) is not null ? "DOES NOT HOLD: the cylinder ends the run"
                : $"HOLDS {(run.Nights.Count == 1 ? ClockText.NightShort(run.Nights[0]) : $"{run.Nights.Count} nights")}: {LeftAtEnd(run, units)}{InsideNever(run, units)}";
        }

        string inside = failing.InsideLow is { } low ? $", inside down to {units.WholeTemperature(low.Kelvins)}" : "";
        return $"FAILS {ClockText.NightShort(failing)}: {NightOutcome.ShortFailure(failing)}{inside}";
    }

    private static string Setting(RunReport run, UnitStyle units)
        => $"from {ClockText.ShortDayClock(run.Scenario.Start)} with {units.RoundMass(run.Summary.LeftAtStart.Kilograms)} in {Cylinders(run.Scenario)}";

    private static string Cylinders(Scenario scenario)
        => scenario.Rig.Cylinders.Count == 1 ? $"the {CylinderWords.Names(scenario.Rig)} cylinder" : CylinderWords.Names(scenario.Rig);

    // A night that fails matters most, the first of them above all; then the night whose cylinder came nearest to its limit.
    private static double Importance(RunReport run, int place)
    {
        NightReport night = run.Nights[place];
        if (night.Verdict != Planning.Harms.Verdict.Holds)
            return 2e9 - place;
        double asked_W = (double)night.DemandAtLow.Watts, given_W = (double)night.SteadySupplyAtLow.Watts;
        return asked_W > 0 ? Math.Min(1e9, 1e6 * asked_W / Math.Max(given_W, 1)) : 0;
    }

    private static string More(RunReport run, IReadOnlyList<int> hidden)
    {
        int fail = hidden.Count(i => run.Nights[i].Verdict != Planning.Harms.Verdict.Holds), hold = hidden.Count - fail;
        return (fail, hold) switch
        {
            (0, _) => $"{hold} more {(hold == 1 ? "holds" : "hold")}.",
            (_, 0) => $"{fail} more {(fail == 1 ? "fails" : "fail")}.",
            _ => $"{fail} more {(fail == 1 ? "fails" : "fail")}, {hold} more {(hold == 1 ? "holds" : "hold")}.",
        };
    }
}
