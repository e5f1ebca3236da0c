using ColdSim.Files.Quantities;
using ColdSim.Model.Appliances;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[on_demand_heater]]</c>: a water heater without a tank.</summary>
internal static class OnDemandHeaterSection
{
    private const double Gallon_m3 = 3.785411784e-3;
    private const double Flow_gal_min = 1;
    private const double Input_Btu_h = 42_000;
    private const double Btu_h = 0.29307107017222;

    private static readonly QuantityKey Input = new("input", Dimension.Power, "1 kW", "60 kW");
    private static readonly QuantityKey Efficiency = new("efficiency", Dimension.Ratio, "0.3", "1");
    private static readonly QuantityKey Flow = new("flow", Dimension.VolumeFlow, "0.2 L/min", "30 L/min");
    private static readonly QuantityKey Cold = new("cold_water", Dimension.Temperature, "0 °C", "30 °C");
    private static readonly QuantityKey Hot = new("hot_water", Dimension.Temperature, "25 °C", "70 °C");

    public static OnDemandWaterHeater Read(SectionReader section, int number, OwnNames names)
    {
        OnDemandWaterHeater usual = new()
        {
            Name = names.Of(section, "on-demand heater", number),
            Input_W = Input_Btu_h * Btu_h,
            Flow_kg_s = Flow_gal_min * Gallon_m3 / 60 * Water.Density_kg_m3,
        };
        OnDemandWaterHeater read = usual with
        {
            Input_W = section.Get(Input, usual.Input_W),
            Efficiency_frac = section.Get(Efficiency, usual.Efficiency_frac),
            Flow_kg_s = section.Get(Flow) * Water.Density_kg_m3 ?? usual.Flow_kg_s,
            Cold_K = section.Get(Cold, usual.Cold_K),
            Hot_K = section.Get(Hot, usual.Hot_K),
            Hours = ApplianceKeys.Needed(section, "hours", "accepted: spans in which hot water runs, such as [\"07:00-07:08\"]"),
            NeedsPower = section.Flag("needs_power") ?? true,
        };
        if (read.Hot_K <= read.Cold_K)
            section.Report(section.Has("hot_water") ? "hot_water" : "cold_water", "the hot water is not warmer than the cold");
        ApplianceKeys.Assume(section, read.Name, "input", $"{Input_Btu_h:#,0} BTU/h");
        ApplianceKeys.Assume(section, read.Name, "efficiency", $"{usual.Efficiency_frac}");
        ApplianceKeys.Assume(section, read.Name, "flow", $"{Flow_gal_min} gal/min");
        ApplianceKeys.Assume(section, read.Name, "cold_water", $"{usual.Cold_K - Water.Freezing_K:0.#} °C");
        ApplianceKeys.Assume(section, read.Name, "hot_water", $"{usual.Hot_K - Water.Freezing_K:0.#} °C");
        return ApplianceKeys.Over(section, read);
    }
}
