using ColdSim.Planning.Figures;
using ColdSim.Planning.Limits;

namespace ColdSim.Files.Results;

/// <summary>Writes what a command reports as CSV, units in the headings.</summary>
public static class CsvReport
{
    /// <summary>Writes a limits chart, a row a cell.</summary>
    /// <param name="report">What is reported.</param>
    /// <param name="output">Takes the text; stays open.</param>
    public static void Write(LimitChart report, TextWriter output)
        => FigureCsv.Write(CsvTable.Limits, LimitFigures.Cells, LimitFigures.CellsOf(report), FigureContext.None, output);
}
