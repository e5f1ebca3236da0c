using ColdSim.App.Text.Documents;

namespace ColdSim.App.Text.Reports;

/// <summary>What a report rests on: what was assumed, how well the books close, and what has to be minded.</summary>
internal static class GroundSections
{
    public static IEnumerable<DocumentSection> Of(ReportContents contents, UnitStyle units)
    {
        IReadOnlyList<string> assumed = contents.Run.Scenario.Assumptions;
        List<DocumentBlock> blocks = [];
        if (assumed.Count > 0)
            blocks.Add(new FoldedBlock($"{assumed.Count} things were assumed", [new PointsBlock([.. units.InOwn(assumed)])], OnPaper: true));
        blocks.Add(new ParagraphBlock(RunText.Ledger(contents.Run.Ledger), ParagraphKind.Note));
        yield return new("assumed", "What was assumed", blocks);
        IEnumerable<string> ofTrip = contents.Trip is { } trip ? TripText.TripCautions(trip, units) : [];
        IEnumerable<string> cautions = ofTrip.Concat(Cautions.Of(contents.Run)).Concat(Cautions.Lines);
        yield return new("cautions", "Cautions", [new PointsBlock([.. units.InOwn(cautions)])]);
    }
}
