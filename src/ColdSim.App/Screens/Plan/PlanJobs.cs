using ColdSim.App.Screens.Pages;
using ColdSim.App.Text;
using ColdSim.Planning.Actions;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Plan;

/// <summary>What is worked out beside the plan as soon as it is shown.</summary>
/// <param name="Report">The run of which it is.</param>
/// <param name="Grid">The steps in which it is.</param>
/// <param name="Margins">How much colder each night could be.</param>
/// <param name="Reason">Why it fails, or where it comes closest.</param>
internal sealed record PlanInsight(RunReport Report, AmountGrid Grid, IReadOnlyList<NightMargin> Margins, Explanation Reason);

/// <summary>What would make all nights hold, or how much the run can still bear.</summary>
/// <param name="Report">The run of which it is.</param>
/// <param name="Plan">The actions.</param>
internal sealed record Remedies(RunReport Report, ActionPlan Plan);

/// <summary>The jobs of the page of the plan.</summary>
internal static class PlanJobs
{
    /// <summary>What the job of margins and reason says that it does.</summary>
    public const string InsightDescription = "Finding how much colder each night could be";

    /// <summary>Margins and reason, on one processor, so that the other is free for what is tried.</summary>
    public static PageJob Insight(RunReport report, UnitStyle units) => new(
        InsightDescription,
        (finished, cancel) =>
        {
            IReadOnlyList<NightMargin> margins = NightMargins.Of(report, units.Grid, () => finished.Report(1), cancel);
            return new PlanInsight(report, units.Grid, margins, Explanation.Reason(report, units.Grid, () => finished.Report(1), 1, cancel));
        })
    {
        KeepsPageVisible = true,
        IsUnasked = true,
    };

    /// <summary>What would make all nights hold.</summary>
    public static PageJob Remedies(RunReport report, UnitStyle units) => new(
        "Finding what would make all nights hold",
        (finished, cancel) =>
        {
            try
            {
                return new Remedies(report, ActionPlan.Of(report, units.Grid, () => finished.Report(1), cancel: cancel));
            }
            catch (LedgerOpenException)
            {
                throw new InvalidOperationException(PageJob.OpenLedger);
            }
        })
    {
        KeepsPageVisible = true,
    };
}
