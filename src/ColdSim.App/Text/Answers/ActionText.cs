using ColdSim.Planning.Advice;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Answers;

/// <summary>What to do about a run, a line each.</summary>
internal static class ActionText
{
    /// <summary>What introduces the actions; empty where there are none.</summary>
    public static string Introduction(RunAdvice advice, RunReport run)
    {
        if (advice.Explanation is not { } why)
            return "";
        int hold = why.Remedies.Count(r => r.Value is not null);
        return hold switch
        {
            0 => "Do: nothing that was tried alone holds. Plan to leave or to plug in before it fails.",
            1 => "Do: this alone would hold.",
            _ => "Do one of these; each was run and holds:",
        };
    }

    /// <summary>The actions, the best first.</summary>
    public static IReadOnlyList<string> Lines(RunAdvice advice, RunReport run, UnitStyle units)
        => advice.Explanation is not { } why ? [] : [.. why.Remedies.Where(r => r.Value is not null).Select(RemedyTable.Short)];
}
