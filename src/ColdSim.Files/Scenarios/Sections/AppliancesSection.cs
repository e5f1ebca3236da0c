using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Every burner beside the furnace, kind by kind.</summary>
internal static class AppliancesSection
{
    private static readonly string[] Kinds = ["draw", "refrigerator", "water_heater", "on_demand_heater", "cooker", "catalytic_heater"];

    // They take gas too, and are called what they are.
    private static readonly string[] Nameless = ["furnace", "generator"];

    /// <summary>Reads them all.</summary>
    /// <param name="root">The scenario.</param>
    /// <param name="gas">The gas, for draws by mass.</param>
    public static IReadOnlyList<GasAppliance> Read(SectionReader root, GasSpecification gas)
    {
        Dictionary<string, IReadOnlyList<SectionReader>> of = Kinds.ToDictionary(k => k, root.Sections);
        OwnNames names = new([.. Kinds.SelectMany(k => of[k])], "appliance", [.. Nameless.Where(root.Has)]);
        return
        [
            .. of["draw"].Select((s, i) => DrawSection.Read(s, gas, i + 1, names)),
            .. of["refrigerator"].Select((s, i) => RefrigeratorSection.Read(s, i + 1, names)),
            .. of["water_heater"].Select((s, i) => WaterHeaterSection.Read(s, i + 1, names)),
            .. of["on_demand_heater"].Select((s, i) => OnDemandHeaterSection.Read(s, i + 1, names)),
            .. CookerSection.ReadAll(of["cooker"], names),
            .. of["catalytic_heater"].Select((s, i) => CatalyticHeaterSection.Read(s, i + 1, names)),
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
                root.Reading.Missing(root.PlaceOf("catalytic_heater"), $"{appliance.Name}: a set_point without a [coach] whose air it could keep", "accepted: hours, or a [coach]");
            else if (appliance is not ConstantDraw && appliance.WarmsCoach_frac > 0)
                root.Reading.Warn($"{appliance.Name} warms the air, and there is no [coach]");
        }
    }
}
