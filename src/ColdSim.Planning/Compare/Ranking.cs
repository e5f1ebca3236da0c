using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Compare;

/// <summary>What decides between two options.</summary>
internal enum Criterion
{
    /// <summary>Nothing that the rule looks at.</summary>
    None,

    /// <summary>The cylinder of one, too full or too hot, ended its run.</summary>
    StoppedByCylinder,

    /// <summary>Hours with frozen water, or with inside below freezing.</summary>
    FreezingHours,

    /// <summary>The lowest temperature below freezing.</summary>
    Lowest,

    /// <summary>Hours without heat while the thermostat calls.</summary>
    NoHeatHours,

    /// <summary>Kelvin-hours below the set point.</summary>
    ColdKelvinHours,

    /// <summary>Minutes short of gas.</summary>
    ShortMinutes,

    /// <summary>One holds all nights and the other does not.</summary>
    Holds,

    /// <summary>For how many more nights the gas would last.</summary>
    Margin,

    /// <summary>What it costs.</summary>
    Cost,

    /// <summary>Walks outside to change cylinders.</summary>
    Work,

    /// <summary>Gas used.</summary>
    Gas,
}

/// <summary>The rule by which options are put in order: the scale of harm, then margin, money and work.</summary>
/// <remarks>Every value is rounded before it is compared, so that no rank rests on what the model cannot know.</remarks>
internal static class Ranking
{
    // Gas for more than another night is no reason to pay or carry more. Our decision; no source gives one.
    private const double MarginStep = 0.5, EnoughMargin = 1, GasStep_kg = 0.1;

    private static readonly (Criterion What, Func<ComparedRow, double> Badness)[] AfterHarm =
    [
        (Criterion.Holds, r => r.Holds ? 0 : 1),
        (Criterion.Margin, r => -Math.Round(Math.Min(r.NightsOfGasLeft, EnoughMargin) / MarginStep)),
        (Criterion.Cost, r => r.Cost is { } cost ? Math.Round(cost) : double.PositiveInfinity),
        (Criterion.Work, r => r.Summary.CylinderChanges),
        (Criterion.Gas, r => Math.Round(r.Summary.GasUsed.Kilograms / GasStep_kg)),
    ];

    /// <summary>The rule in words.</summary>
    public const string Rule =
        "least harm first: fewer hours with frozen water or below freezing inside, then less far below freezing, then fewer hours without "
        + "heat, then less cold below the set point, then fewer minutes short of gas. If the harm is the same: what holds, then gas left for "
        + "another night, lower cost, fewer cylinder changes, less gas, and last the order in the file";

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
        if (a.StoppedByCylinder != b.StoppedByCylinder) return (Criterion.StoppedByCylinder, a.StoppedByCylinder ? 1 : -1);
        (HarmTerm term, int harm) = HarmOrder.Decide(a.Summary.Harm, b.Summary.Harm);
        if (harm != 0) return (Of(term), harm);
        foreach ((Criterion what, Func<ComparedRow, double> badness) in AfterHarm)
        {
            if (badness(a).CompareTo(badness(b)) is not 0 and int sign)
                return (what, sign);
        }

        return (Criterion.None, 0);
    }

    private static Criterion Of(HarmTerm term) => term switch
    {
        HarmTerm.FreezingHours => Criterion.FreezingHours,
        HarmTerm.Lowest => Criterion.Lowest,
        HarmTerm.NoHeatHours => Criterion.NoHeatHours,
        HarmTerm.ColdKelvinHours => Criterion.ColdKelvinHours,
        HarmTerm.ShortMinutes => Criterion.ShortMinutes,
        _ => Criterion.None,
    };
}
