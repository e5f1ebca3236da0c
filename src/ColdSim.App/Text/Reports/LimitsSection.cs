using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Pictures;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Text.Reports;

/// <summary>How cold it may get, by fill: the sentence, the chart and the table.</summary>
internal static class LimitsSection
{
    public static DocumentSection Of(LimitChart chart, UnitStyle units) => new(
        "limits", "How cold it may get",
        [
            new ParagraphBlock(LimitText.Sentence(chart, units)),
            new PictureBlock(new LimitPicture(chart, units)),
            new TableBlock("The coldest night's low that this rig holds", LimitTable.Grid(chart, units)),
            .. LimitText.Legend(chart, units).Select(l => new ParagraphBlock(l, ParagraphKind.Note)),
            new ParagraphBlock(LimitWords.Night(chart, units), ParagraphKind.Note),
            new ParagraphBlock(LimitText.Margin(units), ParagraphKind.Caution),
        ])
    { StartsPage = true };
}
