using ColdSim.Planning.Explain;

namespace ColdSim.App.Text;

/// <summary>What would have held, each alone, in one sentence.</summary>
internal static class RemedySentence
{
    public static string Of(Explanation explanation)
    {
        string[] hold = [.. explanation.Remedies.Where(r => r.Value is not null).Select(RemedyTable.Short)];
        return hold.Length switch
        {
            0 => "Nothing that was tried alone would have held.",
            1 => $"Of what was tried alone only this would have held: {hold[0]}.",
            _ => $"Any of these alone would have held: {string.Join(", ", hold[..^1])} or {hold[^1]}.",
        };
    }
}
