using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Harms;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>What the page of the plan says above its table.</summary>
internal static class PlanWords
{
    /// <summary>Whether every night holds and nothing else ends the run.</summary>
    public static bool Holds(RunReport report) => report.Nights.All(n => n.Verdict == Verdict.Holds) && NightSentence.WhyItEnds(report) is null;

    /// <summary>The verdict with what it means inside, one paragraph.</summary>
    public static string Sentence(RunReport report, UnitStyle units)
    {
        List<string> parts = [];
        if (!report.Ledger.Closes)
            parts.Add("THE SUMS DO NOT CLOSE: do not trust this run.");
        parts.Add(NightsAnswer.Of(report, null, units).Verdict);
        parts.Add(NightSentence.Hot(report, units) ?? "");
        if (report.Nights.FirstOrDefault(n => n.Verdict != Verdict.Holds) is { } failing)
            parts.AddRange([NightOutcome.Inside(failing, units), NightOutcome.Water(failing), NightOutcome.Also(failing)]);
        return string.Join(' ', parts.Where(p => p.Length > 0));
    }

    /// <summary>The same in one line.</summary>
    public static string Brief(RunReport report, UnitStyle units) => NightsAnswer.Of(report, null, units).Brief;

    /// <summary>Why it fails; empty where that is not known, or where the verdict says it.</summary>
    public static string Why(Explanation? reason, UnitStyle units) => reason is { Failed: not null } && ReasonText.Of(reason, units) is { Length: > 0 } why ? $"Why: {why}" : "";

    /// <summary>The night to open on: the first that fails, else the one with the least to spare.</summary>
    public static int FirstNight(RunReport report)
    {
        int tightest = 0;
        for (int i = 0; i < report.Nights.Count; i++)
        {
            if (report.Nights[i].Verdict != Verdict.Holds)
                return i;
            if (Spare(report.Nights[i]) < Spare(report.Nights[tightest]))
                tightest = i;
        }

        return tightest;
    }

    // What the cylinder can give without end at the coldest, over what is asked of it then.
    private static double Spare(NightReport night)
        => (double)night.DemandAtLow.Watts is > 0 and var asked_W ? (double)night.SteadySupplyAtLow.Watts / asked_W : double.PositiveInfinity;
}
