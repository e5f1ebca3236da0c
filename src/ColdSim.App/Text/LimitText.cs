using ColdSim.Planning.Limits;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.App.Text;

/// <summary>A limits chart as text: the sentence, the table, the chart, what they rest on.</summary>
internal static class LimitText
{
    public static IReadOnlyList<TextSection> Sections(LimitChart chart, UnitStyle units, IReadOnlyList<string> cautions)
    {
        List<TextSection> sections =
        [
            new(chart.Scenario.Title, [.. Wrap.Lines(Sentence(chart, units), rest: "  ")]),
            new("The coldest night's low at which all gas asked for is given", [.. LimitTable.Lines(chart, units), "", .. Under(chart, units)]),
            new("The same drawn", LimitPlot.Lines(chart, units)),
            new("The standard night", [.. Wrap.Lines(LimitWords.Night(chart, units)), .. Wrap.Lines(LimitWords.Fed(chart, units))]),
        ];
        if (chart.Scenario.Assumptions.Count > 0)
            sections.Add(new("Assumed", RunText.Points(chart.Scenario.Assumptions)));
        if (cautions.Count > 0)
            sections.Add(new("Cautions", RunText.Points([Margin(units), .. cautions])));
        return sections;
    }

    /// <summary>Why not to go to the number itself.</summary>
    public static string Margin(UnitStyle units)
        => $"These are edges, not plans: a wind, a heat loss or a forecast a little off moves them. Stay {units.Difference(5)} or more on the warm side.";

    private static IEnumerable<string> Under(LimitChart chart, UnitStyle units)
    {
        IEnumerable<string> lines = LimitWords.SetUps(chart, units).Concat(LimitWords.Signs(chart, units));
        if (Electricity(chart) is { } electricity) lines = lines.Append(electricity);
        return lines.SelectMany(l => Wrap.Lines(l, rest: "  "));
    }

    private static string? Electricity(LimitChart chart)
    {
        double most_Wh = chart.Cells.Where(c => double.IsFinite(c.Blanket_J)).Select(c => c.Blanket_J / WattHour_J).DefaultIfEmpty(0).Max();
        return most_Wh < 1 ? null : $"At these limits the blankets take up to {UnitStyle.Number(most_Wh, 0)} Wh a night ({UnitStyle.Number(most_Wh / 12, 0)} Ah at 12 V).";
    }

    /// <summary>One sentence on the fill that is nearest to what is there now.</summary>
    private static string Sentence(LimitChart chart, UnitStyle units)
    {
        int fill = chart.NearestFill();
        bool one = chart.Scenario.Rig.Cylinders.Count == 1;
        List<string> parts = [];
        foreach (LimitColumn column in chart.Columns)
        {
            string with = column.RigVariant.Kind switch
            {
                RigVariantKind.Bare => "",
                RigVariantKind.Blanket => column.RigVariant.Powered ? "with a blanket " : "with a blanket that has no power ",
                RigVariantKind.SecondCylinder => one ? "with a second cylinder alike " : "with one more cylinder alike ",
                _ => "with both ",
            };
            parts.Add(with + Down(column.Cells[fill], chart, units));
        }

        string start = $"With {(one ? "the cylinder" : "every cylinder")} {LimitWords.Percent(chart.Fills[fill])} full, of these nearest to what is in "
            + $"{(one ? "it" : "them")} now, and bare, this rig is ";
        return $"{start}{string.Join("; ", parts)}.";
    }

    private static string Down(LimitCell cell, LimitChart chart, UnitStyle units) => cell.Kind switch
    {
        LimitKind.HoldsAtColdest => $"fed through any night down to {units.Temperature(chart.Axis.Coldest_K)}, the coldest tried",
        LimitKind.NotAtWarmest => $"not fed even through a night of {units.Temperature(chart.Axis.Warmest_K)}, the warmest tried",
        _ => $"fed through a night down to {units.Temperature(cell.Low_K)}",
    };
}
