using ColdSim.Planning.Limits;

namespace ColdSim.App.Text;

/// <summary>One sentence on the fill that is nearest to what is there now.</summary>
internal static class LimitSentence
{
    public static string Of(LimitChart chart, UnitStyle units)
    {
        int fill = chart.NearestFill();
        bool one = chart.Scenario.Rig.Cylinders.Count == 1;
        List<string> parts = [];
        foreach (LimitColumn column in chart.Columns)
        {
            string with = column.SetUp.Kind switch
            {
                SetUpKind.Bare => "",
                SetUpKind.Blanket => column.SetUp.Powered ? "with a blanket " : "with a blanket that has no power ",
                SetUpKind.SecondCylinder => one ? "with a second cylinder alike " : "with one more cylinder alike ",
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
