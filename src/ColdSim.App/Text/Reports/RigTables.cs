using ColdSim.App.Text.Documents;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Reports;

/// <summary>Tables that only some rigs have: each of several cylinders, who drew what gas, water, and the 12 V side.</summary>
internal static class RigTables
{
    public static IEnumerable<DocumentSection> Of(RunReport run, UnitStyle units)
    {
        if (RunText.HasEachCylinder(run.Scenario.Rig))
            yield return Section("cylinders", "Each cylinder", "What is in each cylinder, night by night", Nights(ReportTable.EachCylinder, run, units));
        if (WhoDrew.Applies(run))
        {
            FigureTable table = new(ReportTable.Appliances, units);
            yield return Section(
                "appliances", "Who drew what gas", "Gas of each over the run", table.Grid(NightFigures.Appliances, run.Summary.GasByAppliance));
        }

        if (run.Nights.Any(n => n.Water.Count > 0))
        {
            WaterReport[] water = [.. run.Nights.SelectMany(n => n.Water).GroupBy(w => w.Name).Select(w => WaterReport.Over([.. w]))];
            FigureTable table = new(ReportTable.Water, units);
            yield return Section("water", "Water", "Bays, pipes and tanks over the run", table.Grid(NightFigures.WaterPlaces, water));
        }

        if (run.Scenario.Rig.Power is not null)
            yield return Section("power", "The 12 V side", "The 12 V side, night by night", Nights(ReportTable.Power, run, units));
    }

    private static TextGrid Nights(ReportTable table, RunReport run, UnitStyle units)
        => new FigureTable(table, units) { Context = FigureContext.Of(run.Scenario) }.Grid(NightFigures.All, run.Nights);

    private static DocumentSection Section(string anchor, string title, string caption, TextGrid grid)
        => new(anchor, title, [new TableBlock(caption, grid)]);
}
