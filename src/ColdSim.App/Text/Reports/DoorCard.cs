using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Pictures;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Text.Reports;

/// <summary>The limits on one page, for the door of a cupboard.</summary>
internal static class DoorCard
{
    // So low that all of it goes on one A5 page.
    private const int Plot = 130;

    public static ReportDocument Of(LimitChart chart, UnitStyle units, ReportOrigin origin, Paper paper) => new(
        $"{chart.Scenario.Title}: how cold may it get?",
        [
            new("limits", "The coldest low at which the furnace is fed until dawn",
            [
                new PictureBlock(new LimitPicture(chart, units, Plot)),
                new TableBlock("The coldest low that holds, by fill", LimitTable.Grid(chart, units, withNow: false)),
                new ParagraphBlock(LimitPage.Night(chart, units), ParagraphKind.Note),
                .. LimitWords.Signs(chart).Select(s => new ParagraphBlock(s, ParagraphKind.Note)),
            ]),
            new("signs", "Signs of running short", [new PointsBlock(LimitPage.Signs)]),
            new("short", "When short", [new PointsBlock(LimitPage.WhenShort)]),
            new("always", "Always", [new PointsBlock([.. units.InOwn(LimitPage.Warnings)]), new ParagraphBlock(LimitPage.Deciding, ParagraphKind.Caution)]),
        ])
    { Setting = LimitPage.Rig(chart, units), Made = origin.Sentence, Paper = paper };
}
