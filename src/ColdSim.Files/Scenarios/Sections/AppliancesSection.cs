using ColdSim.Model.Appliances;
using ColdSim.Model.Coach;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>Every burner beside the furnace, kind by kind.</summary>
internal static class AppliancesSection
{
    /// <summary>Reads them all.</summary>
    /// <param name="root">The scenario.</param>
    /// <param name="gas">The gas, for draws by mass.</param>
    public static IReadOnlyList<GasAppliance> Read(SectionReader root, GasSpecification gas) =>
    [
        .. root.Sections("draw").Select((s, i) => DrawSection.Read(s, gas, i + 1)),
        .. root.Sections("refrigerator").Select((s, i) => RefrigeratorSection.Read(s, i + 1)),
        .. root.Sections("water_heater").Select((s, i) => WaterHeaterSection.Read(s, i + 1)),
        .. root.Sections("on_demand_heater").Select((s, i) => OnDemandHeaterSection.Read(s, i + 1)),
        .. CookerSection.ReadAll(root.Sections("cooker")),
        .. root.Sections("catalytic_heater").Select((s, i) => CatalyticHeaterSection.Read(s, i + 1)),
    ];

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
