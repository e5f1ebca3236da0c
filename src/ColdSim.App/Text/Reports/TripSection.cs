using ColdSim.App.Text.Documents;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Text.Reports;

/// <summary>The stops of a trip, its refills and how long each can wait.</summary>
internal static class TripSection
{
    public static DocumentSection Of(TripReport trip, UnitStyle units)
    {
        List<DocumentBlock> blocks = [new ParagraphBlock(TripSentence.Of(trip, units)), new PointsBlock([.. TripText.Stops(trip, units)])];
        if (trip.Refills.Count > 0)
        {
            blocks.Add(new TableBlock("The refills", new FigureTable(ReportTable.Refills, units) { Context = FigureContext.Of(trip.Run.Scenario) }
                .Grid(TripFigures.Refills, TripRefillRow.Of(trip))));
            blocks.Add(new PointsBlock([.. trip.Refills.Select((r, i) => TripSentence.OfRefill(r, i, trip, units))]));
        }

        return new("trip", "Stops and refills", blocks);
    }
}
