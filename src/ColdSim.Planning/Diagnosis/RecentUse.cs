namespace ColdSim.Planning.Diagnosis;

/// <summary>How much the furnace burned lately, in three words; common practice, no source.</summary>
/// <param name="Word">The word with which it is given.</param>
/// <param name="Use_frac">Part of the plate's input that was burned, on average over <see cref="DiagnosisRig.Use_s"/>.</param>
internal sealed record RecentUse(string Word, double Use_frac)
{
    /// <summary>From the least to the most.</summary>
    public static IReadOnlyList<RecentUse> All { get; } = [new("light", 0.2), new("usual", DiagnosisRig.UsualUse_frac), new("hard", 0.9)];

    /// <summary>The one of a word; null for none of them.</summary>
    /// <param name="word">Such as "hard".</param>
    public static RecentUse? Find(string word) => All.FirstOrDefault(u => u.Word == word);

    /// <summary>The nearest to a part of the time that was worked out or counted.</summary>
    /// <param name="lit_frac">Part of the plate's input.</param>
    public static RecentUse Nearest(double lit_frac) => All.MinBy(u => Math.Abs(u.Use_frac - lit_frac))!;
}
