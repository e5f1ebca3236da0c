using ColdSim.Files;

namespace ColdSim.App.Text.Answers;

/// <summary>Text of any length as one line of a terminal.</summary>
internal static class OneLine
{
    private const string Cut = "...";

    /// <summary>The text, cut where it is longer than a line.</summary>
    public static string Of(string text)
    {
        string visible = VisibleText.Of(text);
        return visible.Length <= Wrap.Columns ? visible : visible[..(Wrap.Columns - Cut.Length)] + Cut;
    }
}
