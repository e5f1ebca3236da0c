namespace ColdSim.Planning.Compare;

/// <summary>What sets two options apart.</summary>
public enum Criterion
{
    /// <summary>Nothing that the rule looks at.</summary>
    None,

    /// <summary>One holds all nights and the other does not, or its run was stopped by the cylinder.</summary>
    Holds,

    /// <summary>Minutes of undersupply, and without voltage, in all.</summary>
    ShortTime,

    /// <summary>When gas is first short or voltage first gone.</summary>
    FirstShort,

    /// <summary>The lowest inside temperature.</summary>
    InsideLow,

    /// <summary>Gas used.</summary>
    Gas,
}

/// <summary>The rule by which options are put in order.</summary>
/// <remarks>
/// Values are compared to the minute, a tenth of a degree and ten grams: what lies below is noise of the model, and no reason to
/// call one option better.
/// </remarks>
public static class Ranking
{
    private static readonly (Criterion What, Func<ComparedRow, double> Badness)[] Steps =
    [
        (Criterion.Holds, r => r.Holds ? 0 : r.StoppedByCylinder ? 2 : 1),
        (Criterion.ShortTime, r => Math.Round(r.Summary.UnservedTime.Minutes)),
        (Criterion.FirstShort, r => r.Summary.FirstFailure is { } at ? -Math.Floor((at - DateTimeOffset.UnixEpoch).TotalMinutes) : double.NegativeInfinity),
        (Criterion.InsideLow, r => r.Summary.InsideLow is { } low ? -Math.Round(low.DegreesCelsius * 10) : double.PositiveInfinity),
        (Criterion.Gas, r => Math.Round(r.Summary.GasUsed.Kilograms * 100)),
    ];

    /// <summary>The rule in words.</summary>
    public const string Rule =
        "what holds all nights comes first; then fewer minutes short; then short later; then warmer inside at its coldest; "
        + "then less gas; then as in the file";

    /// <summary>The first step of the rule at which two options differ.</summary>
    public static Criterion Between(ComparedRow a, ComparedRow b) => Compare(a, b).What;

    /// <summary>The rows in order, with their ranks.</summary>
    /// <param name="rows">In any order.</param>
    public static IReadOnlyList<ComparedRow> Ordered(IEnumerable<ComparedRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        List<ComparedRow> sorted = [.. rows];
        sorted.Sort((a, b) => Compare(a, b) is { Sign: not 0 } found ? found.Sign : a.Order.CompareTo(b.Order));
        for (int i = 0; i < sorted.Count; i++)
        {
            bool tie = i > 0 && Between(sorted[i - 1], sorted[i]) == Criterion.None;
            sorted[i] = sorted[i] with { Rank = tie ? sorted[i - 1].Rank : i + 1 };
        }

        return sorted;
    }

    private static (Criterion What, int Sign) Compare(ComparedRow a, ComparedRow b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        foreach ((Criterion what, Func<ComparedRow, double> badness) in Steps)
        {
            if (badness(a).CompareTo(badness(b)) is not 0 and int sign)
                return (what, sign);
        }

        return (Criterion.None, 0);
    }
}
