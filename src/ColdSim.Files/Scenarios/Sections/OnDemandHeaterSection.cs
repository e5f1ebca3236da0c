using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;
using ColdSim.Physics.Freezing;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[on_demand_heater]]</c>: a water heater without a tank.</summary>
internal static class OnDemandHeaterSection
{
    private static readonly OnDemandWaterHeater Usual = new() { Name = "", Input_W = 0, Flow_kg_s = 0 };

    public static readonly TextKey Name = OwnNames.Key("on-demand heater", ApplianceKeys.AnotherName);

    private static readonly QuantityKey Input = new(
        "input", Dimension.Power, "1 kW", "60 kW", KeyDefault.Quantity("42,000 BTU/h"), "its highest; 30,000 to 60,000 BTU/h are common")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Efficiency = new(
        "efficiency", Dimension.Ratio, "0.3", "1", KeyDefault.Of(Usual.Efficiency_frac, ""), "heat to the water per heat of gas")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Flow = new(
        "flow", Dimension.VolumeFlow, "0.2 L/min", "30 L/min", KeyDefault.Quantity("1 gal/min"), "of hot water")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Cold = new(
        "cold_water", Dimension.Temperature, "0 °C", "30 °C", KeyDefault.Of(Usual.Cold_K, "°C"), "that comes in")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Hot = new(
        "hot_water", Dimension.Temperature, "25 °C", "70 °C", KeyDefault.Of(Usual.Hot_K, "°C"), "that is wanted")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly SpansKey Hours = new("hours", KeyDefault.Needed, "when hot water runs");

    public static readonly ScenarioSection Declared = new(
        "on_demand_heater", TableForm.Many, "a water heater without a tank",
        [Name, Input, Efficiency, Flow, Cold, Hot, Hours, ApplianceKeys.NeedsPower, .. ApplianceKeys.Plate]);

    public static OnDemandWaterHeater Read(SectionReader section, int number, OwnNames names)
    {
        OnDemandWaterHeater read = new()
        {
            Name = names.Of(section, Name, "on-demand heater", number),
            Input_W = section.GetOrDefault(Input),
            Efficiency_frac = section.GetOrDefault(Efficiency),
            Flow_kg_s = section.GetOrDefault(Flow) * Water.Density_kg_m3,
            Cold_K = section.GetOrDefault(Cold),
            Hot_K = section.GetOrDefault(Hot),
            Hours = section.Require(Hours, "accepted: spans in which hot water runs, such as [\"07:00-07:08\"]"),
            NeedsPower = section.GetOrDefault(ApplianceKeys.NeedsPower),
        };
        if (read.Hot_K <= read.Cold_K)
            section.Report(section.Has(Hot) ? Hot : Cold, "the hot water is not warmer than the cold");
        section.Assume(Input, read.Name);
        section.Assume(Efficiency, read.Name);
        section.Assume(Flow, read.Name);
        section.Assume(Cold, read.Name);
        section.Assume(Hot, read.Name);
        return ApplianceKeys.Over(section, read);
    }
}
