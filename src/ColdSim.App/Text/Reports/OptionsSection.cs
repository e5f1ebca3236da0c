using ColdSim.App.Text.Documents;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Figures;

namespace ColdSim.App.Text.Reports;

/// <summary>The options side by side.</summary>
internal static class OptionsSection
{
    private const int RankAndGas = 2;

    public static DocumentSection Of(Comparison comparison, UnitStyle units)
    {
        List<DocumentBlock> blocks =
        [
            new ParagraphBlock(CompareSentence.Of(comparison, units)),
            new TableBlock("The options, the best first", Grid(ReportTable.Compare, comparison, units)),
        ];
        TextGrid costs = Grid(ReportTable.CompareCosts, comparison, units);
        if (costs.Columns.Count > RankAndGas + 1)
            blocks.Add(new TableBlock("What they cost and leave", costs));
        blocks.Add(new ParagraphBlock($"Ranked: {Ranking.Rule}.", ParagraphKind.Note));
        if (comparison.Rows.Any(r => r.Option.IsOnGround))
            blocks.Add(new ParagraphBlock(BoardRule.OnTheGround(comparison.Base, units), ParagraphKind.Note));
        return new("options", "The options side by side", blocks);
    }

    private static TextGrid Grid(ReportTable table, Comparison comparison, UnitStyle units)
    {
        TextGrid grid = new FigureTable(table, units) { Context = FigureContext.Of(comparison.Base) }.Grid(
            CompareFigures.Options, comparison.Rows,
            new FigureTable.Cells<ComparedRow>(new(["Option"], Left: true), -1, (r, _) => CompareText.Name(r)));

        // In lines of text rank and verdict need no heading; read aloud they do.
        TextColumn Named(TextColumn column, int place) => column.Heading.Any(h => h.Length > 0) ? column
            : column with { Heading = [place == 0 ? "Rank" : "Outcome"] };
        return grid with { Columns = [.. grid.Columns.Select(Named)] };
    }
}
