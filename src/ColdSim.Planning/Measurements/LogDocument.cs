using ColdSim.Planning.Logs;
using Document = ColdSim.Planning.Figures.Figure<ColdSim.Planning.Measurements.LogDocument>;

namespace ColdSim.Planning.Measurements;

/// <summary>All that is reported of a log: readings of contents beside the simulator, and whatever else was measured.</summary>
/// <param name="Report">The readings of contents.</param>
/// <param name="Measured">The rest.</param>
/// <param name="Scenario">Their scenario.</param>
internal sealed record LogDocument(LogReport Report, MeasuredComparison Measured, Scenario Scenario)
{
    /// <summary>The whole document.</summary>
    public static IReadOnlyList<Document> Figures { get; } =
    [
        .. LogFigures.All.Select(f => f.From<LogDocument>(d => d.Report)),
        .. MeasuredFigures.In<LogDocument>(d => d.Measured, d => d.Scenario),
    ];
}
