using UnitsNet.Units;
using Cylinder = ColdSim.Planning.Figures.Figure<ColdSim.Planning.StartedCylinder>;
using Reading = ColdSim.Planning.Figures.Figure<ColdSim.Planning.LogStart>;

namespace ColdSim.Planning.Figures;

/// <summary>What is reported of the reading that a run starts from.</summary>
internal static class LogStartFigures
{
    private static WordTable<StartedBy> HowKnown { get; } = new WordTable<StartedBy>()
        .With(StartedBy.Read, "read", "read")
        .With(StartedBy.WorkedOut, "worked_out", "worked out")
        .With(StartedBy.Earlier, "earlier_reading", "as last read")
        .With(StartedBy.Scenario, "scenario", "as the scenario says");

    private static IReadOnlyList<Cylinder> Cylinders { get; } =
    [
        Cylinder.Text("name", c => c.Name, "its name"),
        Cylinder.Quantity("left_kg", c => SiQuantity.Mass(c.Left_kg), MassUnit.Kilogram, "what it holds when the run starts"),
        Cylinder.Quantity("standard_uncertainty_kg", c => SiQuantity.Mass(c.Uncertainty_kg), MassUnit.Kilogram, "of that; 0 where it is as the scenario says"),
        Cylinder.Word("by", c => c.By, HowKnown, "how that is known"),
        Cylinder.Time("read_at", c => c.Read, "when it was last read; null where it never was", canBeAbsent: true),
    ];

    private static IReadOnlyList<Reading> All { get; } =
    [
        Reading.Count("line", s => s.Line, "the reading's line in the log"),
        Reading.Time("read_at", s => s.Read, "when it was made"),
        Reading.Quantity("left_kg", s => SiQuantity.Mass(s.Left_kg), MassUnit.Kilogram, "what is in all cylinders when the run starts"),
        Reading.Flag("simulated", s => s.Simulated, "whether the time from the reading to a later start was simulated"),
        Reading.Text("in_use", s => s.InUse, "of several cylinders the one in use by the readings; null where all feed together or the readings do not say it", canBeAbsent: true),
        Reading.Number("in_use_probability", s => s.InUse is null ? null : s.InUse_frac, "that it is this one", canBeAbsent: true),
        Reading.Rows("cylinders", s => s.Cylinders, Cylinders, "each of several cylinders; empty for one"),
    ];

    /// <summary>The group of them in a document.</summary>
    /// <param name="scenario">The document's scenario.</param>
    /// <typeparam name="T">The document.</typeparam>
    public static Figure<T> In<T>(Func<T, Scenario> scenario)
        => Figure<T>.Group("started_from", d => scenario(d).StartedFrom, All, "the log's latest reading, from which the run starts; null where it starts as the scenario says", canBeAbsent: true);
}
