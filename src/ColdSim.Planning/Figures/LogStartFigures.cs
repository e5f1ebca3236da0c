using UnitsNet.Units;
using Reading = ColdSim.Planning.Figures.Figure<ColdSim.Planning.LogStart>;

namespace ColdSim.Planning.Figures;

/// <summary>What is reported of the reading that a run starts from.</summary>
internal static class LogStartFigures
{
    private static IReadOnlyList<Reading> All { get; } =
    [
        Reading.Count("line", s => s.Line, "the reading's line in the log"),
        Reading.Time("read_at", s => s.Read, "when it was made"),
        Reading.Quantity("left_kg", s => SiQuantity.Mass(s.Left_kg), MassUnit.Kilogram, "what is in all cylinders when the run starts"),
        Reading.Flag("simulated", s => s.Simulated, "whether the time from the reading to a later start was simulated"),
    ];

    /// <summary>The group of them in a document.</summary>
    /// <param name="scenario">The document's scenario.</param>
    /// <typeparam name="T">The document.</typeparam>
    public static Figure<T> In<T>(Func<T, Scenario> scenario)
        => Figure<T>.Group("started_from", d => scenario(d).StartedFrom, All, "the log's latest reading, from which the run starts; null where it starts as the scenario says", canBeAbsent: true);
}
