using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Figures;

namespace ColdSim.App.Text;

/// <summary>The tables of a chance, within 80 columns.</summary>
internal static class ChanceTable
{
    public static IReadOnlyList<string> Nights(ChanceReport report, UnitStyle units)
        => new FigureTable(ReportTable.ChanceNights, units) { Context = FigureContext.Of(report.Scenario), Gap = 2 }
            .Lines(ChanceReportFigures.Nights, [.. ChanceNight.Of(report)]);

    /// <summary>The nights before they are set into lines.</summary>
    public static TextGrid NightGrid(ChanceReport report, UnitStyle units)
        => new FigureTable(ReportTable.ChanceNights, units) { Context = FigureContext.Of(report.Scenario) }.Grid(ChanceReportFigures.Nights, [.. ChanceNight.Of(report)]);

    public static IReadOnlyList<string> Influences(ChanceReport report, int gap = 2)
        => report.Influences.Count == 0 ? [] : new FigureTable(ReportTable.Influences, UnitStyle.Us) { Gap = gap }.Lines(ChanceReportFigures.Influences, report.Influences);

    public static IReadOnlyList<string> Options(ChanceReport report)
        => new FigureTable(ReportTable.ChanceOptions, UnitStyle.Us) { Gap = 2 }.Lines(ChanceReportFigures.Options, report.Options);
}
