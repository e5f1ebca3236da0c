using ColdSim.App.Text.Answers;
using ColdSim.App.Text.Documents;
using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Figures;

namespace ColdSim.App.Text.Reports;

/// <summary>What to look at if the furnace will not light: safety, the tests in order, what this rig's cylinder should show, and what
/// never to do.</summary>
internal static class NoHeatSection
{
    private const int MostTests = 10;

    public static DocumentSection Of(NoHeatContents contents, UnitStyle units) => new(
        "no-heat", "If the furnace will not light",
        [
            .. DiagnosisAnswer.Emergencies.Select(a => new ParagraphBlock(a.Brief, ParagraphKind.Caution)),
            new ParagraphBlock("Look at these first, the most telling for its trouble at the top. 'coldsim diagnose' then ranks the causes "
                + "by what was seen."),
            new PointsBlock(
                [.. contents.Tests.DistinctBy(DiagnosisWords.OptionOf).Take(MostTests).Select(DiagnosisWords.ToDoWithOption)]),
            new TableBlock(
                Caption(contents, units),
                new FigureTable(ReportTable.DiagnosisStates, units).Grid(DiagnosisFigures.StateFigures, contents.Expected)),
            new ParagraphBlock(
                $"At any fill {DiagnosisText.Need(contents.Model, units)} in the cylinder. The sound one has rested halfway back to the "
                    + "air's temperature.",
                ParagraphKind.Note),
            new ParagraphBlock("Never:"),
            new PointsBlock([.. Enum.GetValues<Cause>().GroupBy(CauseWords.Never).Select(Never)]),
        ])
    { StartsPage = true };

    private static string Never(IGrouping<string, Cause> same)
        => $"{string.Join("; ", same.Select(c => DiagnosisFigures.Causes[c].Text))}: {same.Key["Never: ".Length..]}";

    private static string Caption(NoHeatContents contents, UnitStyle units)
        => $"What the cylinder should show by the model at the coldest hour, {ClockText.DayClock(contents.At)}, in air of "
            + units.WholeTemperature(contents.Air_K);
}
