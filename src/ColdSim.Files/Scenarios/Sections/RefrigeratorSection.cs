using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[refrigerator]]</c>: an absorption refrigerator on gas, or on the hookup where it can.</summary>
internal static class RefrigeratorSection
{
    private static readonly AbsorptionRefrigerator Usual = new() { Name = "", Input_W = 0 };

    public static readonly TextKey Name = OwnNames.Key("refrigerator", ApplianceKeys.AnotherName);

    private static readonly QuantityKey Input = new(
        "input", Dimension.Power, "50 W", "2 kW", KeyDefault.Quantity("1,500 BTU/h"), "of the burner; 1,200 to 2,400 BTU/h are common")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey SetPoint = new(
        "set_point", Dimension.Temperature, "-25 °C", "12 °C", KeyDefault.Of(Usual.SetPoint_K, "°C"), "of the box");

    private static readonly QuantityKey Differential = new(
        "differential", Dimension.TemperatureDifference, "0.5 K", "10 K", KeyDefault.Of(Usual.Differential_K, "K"), "whole band between on and off");

    private static readonly QuantityKey Leak = new(
        "leak", Dimension.Conductance, "0.2 W/K", "20 W/K", KeyDefault.Of(Usual.Leak_W_K, "W/K"), "from the coach's air into the box")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Capacity = new(
        "capacity", Dimension.HeatCapacity, "5 kJ/K", "2 MJ/K", KeyDefault.Of(Usual.Capacity_J_K, "kJ/K"), "of box and food");

    private static readonly QuantityKey Performance = new(
        "performance", Dimension.Ratio, "0.05", "0.8", KeyDefault.Of(Usual.Performance_frac, ""), "heat lifted out of the box per heat of gas")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    private static readonly QuantityKey Electric = new(
        "electric", Dimension.Power, "0 W", "2 kW", KeyDefault.Of(Usual.ElectricInput_W, "W"), "of its element, used instead of gas on a hookup");

    public static readonly ScenarioSection Declared = new(
        "refrigerator", TableForm.Many, "an absorption refrigerator on gas, or on the hookup where it can",
        [
            Name, Input, ApplianceKeys.Hours, SetPoint, Differential, Leak, Capacity, Performance, Electric, ApplianceKeys.NeedsPower, .. ApplianceKeys.Plate,
        ]);

    public static AbsorptionRefrigerator Read(SectionReader section, int number, OwnNames names)
    {
        AbsorptionRefrigerator read = new()
        {
            Name = names.Of(section, Name, "refrigerator", number),
            Input_W = section.GetOrDefault(Input),
            Hours = section.Get(ApplianceKeys.Hours) ?? Usual.Hours,
            SetPoint_K = section.GetOrDefault(SetPoint),
            Differential_K = section.GetOrDefault(Differential),
            Leak_W_K = section.GetOrDefault(Leak),
            Capacity_J_K = section.GetOrDefault(Capacity),
            Performance_frac = section.GetOrDefault(Performance),
            ElectricInput_W = section.GetOrDefault(Electric),
            NeedsPower = section.GetOrDefault(ApplianceKeys.NeedsPower),
        };
        section.Assume(Input, read.Name);
        section.Assume(Leak, read.Name);
        section.Assume(Performance, read.Name);
        return ApplianceKeys.Over(section, read);
    }
}
