using ColdSim.Planning.Nights;

namespace ColdSim.App.Text;

/// <summary>The parts of a printed run or trip that only some rigs have: what a mixed gas is made of, who drew what gas, water, damp and the 12 V side.</summary>
internal static class RigSections
{
    public static IEnumerable<TextSection> Of(RunReport report, UnitStyle units)
    {
        if (BlendTable.Applies(report))
            yield return new("The gas", BlendTable.Lines(report, units));
        if (WhoDrew.Applies(report))
            yield return new("Who drew what gas", WhoDrew.Lines(report, units));
        if (WaterTable.Applies(report))
            yield return new("Water", WaterTable.Lines(report, units));
        if (report.Scenario.Rig.Heaters.Count > 0)
            yield return new("Other heat", OtherHeatLines(report, units));
        if (DampLines.Applies(report))
            yield return new("Damp", DampLines.Of(report, units));
        if (PowerTable.Applies(report))
            yield return new("The 12 V side", PowerTable.Lines(report));
    }

    private static IReadOnlyList<string> OtherHeatLines(RunReport report, UnitStyle units)
    {
        string names = string.Join(", ", report.Scenario.Rig.Heaters.Select(h => h.Name));
        string nights = string.Join(", ", report.Nights.Select(n => $"{ClockText.NightShort(n)} {units.Energy(n.OtherHeat.Joules)}"));
        return Wrap.Lines($"From {names}: {nights}.", rest: "  ");
    }
}
