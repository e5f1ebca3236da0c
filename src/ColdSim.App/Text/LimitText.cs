using ColdSim.Model;
using ColdSim.Planning.Limits;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>A limits chart as text: the sentence, the table, the chart, what they rest on.</summary>
internal static class LimitText
{
    /// <summary>The heading above the picture.</summary>
    public const string Drawn = "The same drawn";

    /// <param name="chart">The limits.</param>
    /// <param name="units">The person's units.</param>
    /// <param name="cautions">What to be careful about.</param>
    /// <param name="picture">Rows of a picture; null for the plain one.</param>
    public static IReadOnlyList<TextSection> Sections(
        LimitChart chart, UnitStyle units, IReadOnlyList<string> cautions, IReadOnlyList<string>? picture = null)
    {
        List<TextSection> sections =
        [
            new(chart.Scenario.Title, [.. Wrap.Lines(Sentence(chart, units), rest: "  ")]),
            new(
                "The coldest night's low that this rig holds",
                [.. LimitTable.Lines(chart, units), "", .. Legend(chart, units).SelectMany(l => Wrap.Lines(l, rest: "  "))]),
            new(Drawn, picture ?? LimitPlot.Lines(chart, units)),
            new("The standard night", [.. Wrap.Lines(LimitWords.Night(chart, units)), .. Wrap.Lines(LimitWords.Fed(chart, units))]),
        ];
        if (chart.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(chart.Scenario.Assumptions, units)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points([Margin(units), .. cautions], units)));
        return sections;
    }

    /// <summary>Why not to go to the number itself.</summary>
    public static string Margin(UnitStyle units)
        => $"These are edges, not plans: a wind, a heat loss or a forecast a little off moves them. "
            + $"Stay {units.Difference(5)} or more on the warm side.";

    /// <summary>What goes under the table, a sentence each.</summary>
    public static IEnumerable<string> Legend(LimitChart chart, UnitStyle units)
    {
        IEnumerable<string> lines = LimitWords.SetUps(chart, units).Concat(LimitWords.Signs(chart));
        return Electricity(chart) is { } electricity ? lines.Append(electricity) : lines;
    }

    private static string? Electricity(LimitChart chart)
    {
        double most_Wh = chart.Cells.Where(c => double.IsFinite(c.Blanket_J)).Select(c => c.Blanket_J / WattHour_J).DefaultIfEmpty(0).Max();
        return most_Wh < 1 ? null
            : $"At these limits the blankets take up to {UnitStyle.Number(most_Wh, 0)} Wh a night "
                + $"({UnitStyle.Number(most_Wh / 12, 0)} Ah at 12 V).";
    }

    /// <summary>What the rig can do with what is in its cylinders now, as it is first.</summary>
    public static string Sentence(LimitChart chart, UnitStyle units)
    {
        Rig rig = chart.Scenario.Rig;
        LimitColumn first = LimitWords.Own(chart);
        string bare = first.RigVariant.AsItIs ? "" : ", but bare";
        string left = string.Join(" and ", rig.Cylinders.Select(c => units.Mass(c.Contents_kg)));
        IEnumerable<string> others = chart.Columns.Where(c => c != first)
            .Select(c => $"{With(c.RigVariant, rig)}, {Down(c.Now, chart, units)}");
        return string.Join("; ", others.Prepend($"As it is now ({left}{bare}), this rig holds {Down(first.Now, chart, units)}")) + ".";
    }

    private static string With(RigVariant setUp, Rig rig) => setUp.Kind switch
    {
        RigVariantKind.Bare => "without a blanket",
        RigVariantKind.Blanket => setUp.Powered ? "with a blanket" : "with a blanket that has no power",
        RigVariantKind.SecondCylinder => $"with {(rig.Cylinders.Count == 1 ? "a second" : "one more")} cylinder like the first",
        _ => "with both",
    };

    private static string Down(LimitCell cell, LimitChart chart, UnitStyle units) => cell.Kind switch
    {
        LimitKind.HoldsAtColdest => $"down to {units.Temperature(chart.Axis.Coldest_K)}, the coldest tried, and perhaps below",
        LimitKind.NotAtWarmest => $"not even in a night of {units.Temperature(chart.Axis.Warmest_K)}, the warmest tried",
        _ => $"down to a low of {units.Temperature(cell.Low_K)}",
    };
}
