using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Coach;
using ColdSim.Model.Furnace;
using ColdSim.Model.Nodes;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Water in the rig: wet bays first, then the pipes and tanks in them.</summary>
internal static class WaterSection
{
    /// <summary>Reads them all, and gives a bay the heat that the furnace's ducts lose into it.</summary>
    public static (IReadOnlyList<ThermalNode> Water, FurnaceSpecification? Furnace) Read(
        SectionReader root, SectionReader furnaceSection, FurnaceSpecification? whole, string? ductLossTo, CoachSpecification? coach)
    {
        IReadOnlyList<SectionReader> bays = root.Sections(WetBaySection.Declared);
        IReadOnlyList<SectionReader> pipes = root.Sections(PipeSection.Declared);
        IReadOnlyList<SectionReader> tanks = root.Sections(TankSection.Declared);
        ThermalNode[] read = [.. bays.Select((s, i) => WetBaySection.Read(s, i + 1))];
        (FurnaceSpecification? furnace, int warmed) = FurnaceSection.DuctsLoseTo(furnaceSection, whole, ductLossTo, read);
        if (warmed >= 0)
            read[warmed] = read[warmed] with { Duct_frac = read[warmed].Duct_frac + whole!.DuctLoss_frac };
        WaterPlace places = new(read);
        List<ThermalNode> water =
        [
            .. read,
            .. pipes.Select((s, i) => PipeSection.Read(s, i + 1, places)),
            .. tanks.Select((s, i) => TankSection.Read(s, i + 1, places)),
        ];
        CheckNames(
            root.Reading, water,
            [.. bays.Select(b => (b, WetBaySection.Name)), .. pipes.Select(p => (p, PipeSection.Name)), .. tanks.Select(t => (t, TankSection.Name))]);
        Check(root.Reading, water, bays, furnace, coach);
        return (water, furnace);
    }

    private static void CheckNames(Reading reading, List<ThermalNode> water, IReadOnlyList<(SectionReader Section, TextKey Name)> sections)
    {
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < water.Count; i++)
        {
            if (!names.Add(water[i].Name))
                reading.Report(sections[i].Section.ValuePlace(sections[i].Name), $"'name' is \"{Quote.Of(water[i].Name)}\", and another bay, pipe or tank is called so");
        }
    }

    private static void Check(
        Reading reading, List<ThermalNode> water, IReadOnlyList<SectionReader> bays, FurnaceSpecification? furnace, CoachSpecification? coach)
    {
        SectionReader? ducted = bays.LastOrDefault(b => b.Has(WetBaySection.Duct));
        if (ducted is not null && water.Sum(n => n.Duct_frac) + (furnace?.DuctLoss_frac ?? 0) > 1)
            ducted.Report(WetBaySection.Duct, "the ducts bring and lose more than all of the furnace's heat", "accepted: 1 in all");
        if (ducted is not null && furnace is null)
            reading.Warn($"a [[wet_bay]] has a duct, and there is no [furnace]");
        if (coach is null && water.Exists(n => n.Inside_W_K > 0))
            reading.Warn($"water is kept inside or beside the coach, but there is no [coach]: the air outside is used in its place");
    }
}
