using ColdSim.App.Text.Answers;
using ColdSim.App.Text.Documents;
using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text.Reports;

/// <summary>What scale, level, pressure gauge and echo of each cylinder should show when the liquid is coldest, to take outside.</summary>
internal static class GaugesSection
{
    public static DocumentSection Of(ExpectedReadings expected, UnitStyle units)
    {
        Answer answer = ExpectedAnswer.Of(expected, units);
        return new(
            "gauges", "What the gauges should show",
            [
                new ParagraphBlock(answer.Verdict),
                .. answer.Consequences.Select(c => new ParagraphBlock(c)),
                new ParagraphBlock(
                    $"{HeightReading.WhyLevelMoves} A gauge that differs by more than its own error says that the use, the tare or the "
                        + "filling was not what you thought."),
                .. expected.Cylinders.Select(c => new TableBlock(
                    ExpectedTable.Title(c, expected, units), ExpectedTable.Grid(c, expected, units, heading: "instrument"))),
                new PointsBlock(ExpectedText.Basis(expected, units)),
                new ParagraphBlock("'coldsim gauge expect' says the same for any other time.", ParagraphKind.Note),
                new ParagraphBlock(answer.Caution, ParagraphKind.Caution),
            ])
        { StartsPage = true };
    }
}
