using ColdSim.Model.Coach;
using ColdSim.Model.Furnace;
using ColdSim.Model.Nodes;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Water in the rig: wet bays first, then the pipes and tanks in them.</summary>
internal static class WaterSection
{
    private static readonly string[] Kinds = ["wet_bay", "pipe", "tank"];

    /// <summary>Reads them all.</summary>
    public static IReadOnlyList<ThermalNode> Read(SectionReader root, FurnaceSpecification? furnace, CoachSpecification? coach)
    {
        IReadOnlyList<SectionReader> bays = root.Sections("wet_bay");
        ThermalNode[] read = [.. bays.Select((s, i) => WetBaySection.Read(s, i + 1))];
        WaterPlace places = new(read);
        List<ThermalNode> water =
        [
            .. read,
            .. root.Sections("pipe").Select((s, i) => PipeSection.Read(s, i + 1, places)),
            .. root.Sections("tank").Select((s, i) => TankSection.Read(s, i + 1, places)),
        ];
        Check(root, water, bays, furnace, coach);
        return water;
    }

    private static void Check(
        SectionReader root, List<ThermalNode> water, IReadOnlyList<SectionReader> bays, FurnaceSpecification? furnace, CoachSpecification? coach)
    {
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        SectionReader[] sections = [.. Kinds.SelectMany(k => k == "wet_bay" ? bays : root.Sections(k))];
        for (int i = 0; i < water.Count; i++)
        {
            if (!names.Add(water[i].Name))
                root.Reading.Report(sections[i].Value("name")?.Place ?? sections[i].Place, $"'name' is \"{water[i].Name}\", and another bay, pipe or tank is called so");
        }
        SectionReader? ducted = bays.LastOrDefault(b => b.Has("duct"));
        if (ducted is not null && water.Sum(n => n.Duct_frac) > 1)
            ducted.Report("duct", "the ducts to the bays bring more than all of the furnace's heat", "accepted: 1 in all");
        if (ducted is not null && furnace is null)
            root.Reading.Warn($"a [[wet_bay]] has a duct, and there is no [furnace]");
        if (coach is null && water.Exists(n => n.Inside_W_K > 0))
            root.Reading.Warn($"water stands inside or beside the coach, and there is no [coach]: inside is taken as outside air");
    }
}
