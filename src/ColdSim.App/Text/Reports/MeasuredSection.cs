using ColdSim.App.Text.Documents;
using ColdSim.Planning;
using ColdSim.Planning.Measurements;

namespace ColdSim.App.Text.Reports;

/// <summary>What was measured beside what was computed.</summary>
internal static class MeasuredSection
{
    public static DocumentSection Of(MeasuredComparison measured, Scenario scenario, UnitStyle units) => new(
        "measured",
        MeasuredText.Title,
        [
            .. measured.Groups.Count == 0 ? Array.Empty<DocumentBlock>() : [new PointsBlock([.. measured.Groups.Select(g => MeasuredWords.Sentence(g, units))])],
            new TableBlock("Values from the log beside the run", MeasuredText.Grid(measured, scenario, units)),
            .. MeasuredText.Notes(measured).Select(n => new ParagraphBlock(n, ParagraphKind.Note)),
        ]);
}
