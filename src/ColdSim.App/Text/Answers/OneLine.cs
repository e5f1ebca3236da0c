using ColdSim.Files;

namespace ColdSim.App.Text.Answers;

/// <summary>Text of any length as one line of a terminal.</summary>
internal static class OneLine
{
    private const string Cut = "...", Clause = ", ";

    /// <summary>The text; where it is longer than a line, without its last clauses, or cut between two words.</summary>
    public static string Of(string text)
    {
        string visible = VisibleText.Of(text);
        if (visible.Length <= Wrap.Columns)
            return visible;
        int clause = visible.LastIndexOf(Clause, Wrap.Columns - 1, StringComparison.Ordinal);
        if (clause > Wrap.Columns / 2 && visible.AsSpan(0, clause).Count('"') % 2 == 0)
            return visible[..clause];
        int word = visible.LastIndexOf(' ', Wrap.Columns - Cut.Length);
        return visible[..(word > Wrap.Columns / 2 ? word : Wrap.Columns - Cut.Length)] + Cut;
    }
}
