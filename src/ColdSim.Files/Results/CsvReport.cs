using ColdSim.Files.Disk;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Figures;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Results;

/// <summary>Writes what a command reports as CSV, units in the headings.</summary>
public static class CsvReport
{
    /// <summary>The file of a trip.</summary>
    public static OutputKind TripKind => new("the nights of a trip", text => FigureCsv.HasHeadings(text, CsvTable.Trip, TripFigures.Nights));

    /// <summary>The file of a comparison.</summary>
    public static OutputKind CompareKind => new("the options of a comparison", text => FigureCsv.HasHeadings(text, CsvTable.Compare, CompareFigures.Options));

    /// <summary>The file of a limits chart.</summary>
    public static OutputKind LimitsKind => new("the cells of a limits chart", text => FigureCsv.HasHeadings(text, CsvTable.Limits, LimitFigures.Cells));

    /// <summary>Writes a trip, a row a night.</summary>
    /// <param name="report">What is reported.</param>
    /// <param name="output">Takes the text; stays open.</param>
    /// <param name="form">The units and the separator; metric and a comma unless given.</param>
    public static void Write(TripReport report, TextWriter output, CsvForm? form = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        FigureCsv.Write(CsvTable.Trip, TripFigures.Nights, TripNightRow.Of(report), FigureContext.Of(report.Run.Scenario), output, form ?? CsvForm.Metric);
    }

    /// <summary>Writes a comparison, a row an option, the best first.</summary>
    /// <inheritdoc cref="Write(TripReport, TextWriter, CsvForm)"/>
    public static void Write(Comparison report, TextWriter output, CsvForm? form = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        FigureCsv.Write(CsvTable.Compare, CompareFigures.Options, report.Rows, FigureContext.Of(report.Base), output, form ?? CsvForm.Metric);
    }

    /// <summary>Writes a limits chart, a row a cell.</summary>
    /// <inheritdoc cref="Write(TripReport, TextWriter, CsvForm)"/>
    public static void Write(LimitChart report, TextWriter output, CsvForm? form = null)
        => FigureCsv.Write(CsvTable.Limits, LimitFigures.Cells, LimitFigures.CellsOf(report), FigureContext.None, output, form ?? CsvForm.Metric);
}
