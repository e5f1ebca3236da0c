using ColdSim.App.Text.Answers;
using ColdSim.App.Text.Documents;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Purchases;

namespace ColdSim.App.Text.Reports;

/// <summary>Cylinders that can be bought: the verdict, the set-ups side by side, and how to read them.</summary>
internal static class PurchasesSection
{
    public static DocumentSection Of(PurchaseReport report, UnitStyle units)
    {
        Answer answer = PurchaseAnswer.Of(report, units);
        return new(
            "buy", "Cylinders to buy",
            [
                new ParagraphBlock(answer.Verdict),
                new ParagraphBlock(string.Join(' ', answer.Consequences)),
                new TableBlock(
                    "The set-ups, the best first",
                    new FigureTable(ReportTable.Purchases, units).Grid(PurchaseFigures.Rows, report.Rows)),
                .. PurchaseText.Legend(report, units).Select(l => new ParagraphBlock(l, ParagraphKind.Note)),
                new ParagraphBlock(answer.Caution, ParagraphKind.Caution),
            ])
        { StartsPage = true };
    }
}
