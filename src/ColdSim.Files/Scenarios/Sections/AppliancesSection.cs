using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Every burner beside the furnace, kind by kind.</summary>
internal static class AppliancesSection
{
    private static readonly (ScenarioSection Declared, TextKey Name)[] Kinds =
    [
        (DrawSection.Declared, DrawSection.Name), (RefrigeratorSection.Declared, RefrigeratorSection.Name), (WaterHeaterSection.Declared, WaterHeaterSection.Name),
        (OnDemandHeaterSection.Declared, OnDemandHeaterSection.Name), (CookerSection.Declared, CookerSection.Name),
        (CatalyticHeaterSection.Declared, CatalyticHeaterSection.Name),
    ];

    // They take gas too, and are called what they are.
    private static readonly ScenarioSection[] Nameless = [FurnaceSection.Declared, GeneratorSection.Declared];

    /// <summary>Reads them all.</summary>
    /// <param name="root">The scenario.</param>
    /// <param name="gas">The gas, for draws by mass.</param>
    public static IReadOnlyList<GasAppliance> Read(SectionReader root, GasSpecification gas)
    {
        // Plain loops: queries over pairs are compiled anew at each start.
        Dictionary<ScenarioSection, IReadOnlyList<SectionReader>> of = [];
        List<(SectionReader, TextKey)> named = [];
        foreach ((ScenarioSection declared, TextKey name) in Kinds)
        {
            of[declared] = root.Sections(declared);
            foreach (SectionReader section in of[declared])
                named.Add((section, name));
        }

        OwnNames names = new(named, "appliance", [.. Nameless.Where(root.Has).Select(n => n.Name)]);
        return
        [
            .. of[DrawSection.Declared].Select((s, i) => DrawSection.Read(s, gas, i + 1, names)),
            .. of[RefrigeratorSection.Declared].Select((s, i) => RefrigeratorSection.Read(s, i + 1, names)),
            .. of[WaterHeaterSection.Declared].Select((s, i) => WaterHeaterSection.Read(s, i + 1, names)),
            .. of[OnDemandHeaterSection.Declared].Select((s, i) => OnDemandHeaterSection.Read(s, i + 1, names)),
            .. CookerSection.ReadAll(of[CookerSection.Declared], names),
            .. of[CatalyticHeaterSection.Declared].Select((s, i) => CatalyticHeaterSection.Read(s, i + 1, names)),
        ];
    }

    /// <summary>Says what of them can have no effect.</summary>
    public static void Check(SectionReader root, IReadOnlyList<GasAppliance> appliances, CoachSpecification? coach)
    {
        if (coach is not null)
            return;
        foreach (GasAppliance appliance in appliances)
        {
            if (appliance is CatalyticHeater { OwnThermostat: not null })
            {
                root.Reading.Missing(
                    root.PlaceOf(CatalyticHeaterSection.Declared), $"{appliance.Name}: a set_point without a [coach] whose air it could keep", "accepted: hours, or a [coach]");
            }
            else if (appliance is not ConstantDraw && appliance.WarmsCoach_frac > 0)
                root.Reading.Warn($"{appliance.Name} warms the air, and there is no [coach]");
        }
    }
}
