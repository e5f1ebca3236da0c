using ColdSim.App.Screens.Pages;
using ColdSim.Planning.Actions;

namespace ColdSim.App.Screens.Plan;

/// <summary>The list of what would make all nights hold, while it is open.</summary>
/// <param name="Found">The actions, or why there are none yet.</param>
/// <param name="Row">The chosen one.</param>
internal sealed record RemedyList(Pending<Remedies> Found, int Row = 0)
{
    /// <summary>What can be chosen: what holds, or what does the least harm where nothing does.</summary>
    public IReadOnlyList<PlannedAction> Actions => Found.Value is not { Plan: { } plan } ? []
        : plan.LeastHarmful is { } least ? [least] : plan.Holding;

    /// <summary>The chosen one; null where there is none.</summary>
    public PlannedAction? Chosen => Row < Actions.Count ? Actions[Row] : null;

    /// <summary>The list after a message.</summary>
    public RemedyList Update(PageMessage message) => message switch
    {
        PageMessage.Rows rows => At(Row + rows.Count),
        PageMessage.First => At(0),
        PageMessage.Last => At(int.MaxValue),
        _ => this with { Found = Found.Update(message) },
    };

    private RemedyList At(int row) => this with { Row = Math.Clamp(row, 0, Math.Max(0, Actions.Count - 1)) };
}
