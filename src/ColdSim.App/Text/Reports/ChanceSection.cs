using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Pictures;
using ColdSim.Planning.Ensemble;

namespace ColdSim.App.Text.Reports;

/// <summary>The chance of holding: the sentence, the fan, the nights and what matters most.</summary>
internal static class ChanceSection
{
    public static DocumentSection Of(ChanceReport chance, UnitStyle units)
    {
        List<DocumentBlock> blocks = [new ParagraphBlock(ChanceSentence.Of(chance))];
        if (chance.Fan.Count > 0)
            blocks.Add(new PictureBlock(FanPicture.Of(chance, units)));
        blocks.Add(new TableBlock("The chance of each night", ChanceTable.NightGrid(chance, units)));
        blocks.Add(new ParagraphBlock(ChanceText.Legend(chance), ParagraphKind.Note));
        blocks.Add(new ParagraphBlock($"What matters most: {ChanceSentence.Matters(chance)}"));
        blocks.Add(new FoldedBlock("What was varied, and by how much", [new PointsBlock([.. ChanceText.Errors(chance, units)])], OnPaper: false));
        return new("chance", "The chance of holding", blocks) { StartsPage = true };
    }
}
