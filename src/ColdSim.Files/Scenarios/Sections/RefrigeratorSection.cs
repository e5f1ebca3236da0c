using ColdSim.Files.Quantities;
using ColdSim.Model.Appliances;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[refrigerator]]</c>: an absorption refrigerator on gas, or on the hookup where it can.</summary>
internal static class RefrigeratorSection
{
    private const double Input_Btu_h = 1500;
    private const double Btu_h = 0.29307107017222;

    private static readonly QuantityKey Input = new("input", Dimension.Power, "50 W", "2 kW");
    private static readonly QuantityKey SetPoint = new("set_point", Dimension.Temperature, "-25 °C", "12 °C");
    private static readonly QuantityKey Differential = new("differential", Dimension.TemperatureDifference, "0.5 K", "10 K");
    private static readonly QuantityKey Leak = new("leak", Dimension.Conductance, "0.2 W/K", "20 W/K");
    private static readonly QuantityKey Capacity = new("capacity", Dimension.HeatCapacity, "5 kJ/K", "2 MJ/K");
    private static readonly QuantityKey Performance = new("performance", Dimension.Ratio, "0.05", "0.8");
    private static readonly QuantityKey Electric = new("electric", Dimension.Power, "0 W", "2 kW");

    public static AbsorptionRefrigerator Read(SectionReader section, int number, OwnNames names)
    {
        AbsorptionRefrigerator usual = new() { Name = names.Of(section, "refrigerator", number), Input_W = Input_Btu_h * Btu_h };
        AbsorptionRefrigerator read = usual with
        {
            Input_W = section.Get(Input, usual.Input_W),
            Hours = section.Spans("hours") ?? usual.Hours,
            SetPoint_K = section.Get(SetPoint, usual.SetPoint_K),
            Differential_K = section.Get(Differential, usual.Differential_K),
            Leak_W_K = section.Get(Leak, usual.Leak_W_K),
            Capacity_J_K = section.Get(Capacity, usual.Capacity_J_K),
            Performance_frac = section.Get(Performance, usual.Performance_frac),
            ElectricInput_W = section.Get(Electric, usual.ElectricInput_W),
            NeedsPower = section.Flag("needs_power") ?? true,
        };
        ApplianceKeys.Assume(section, read.Name, "input", $"{Input_Btu_h:#,0} BTU/h");
        ApplianceKeys.Assume(section, read.Name, "leak", $"{usual.Leak_W_K} W/K");
        ApplianceKeys.Assume(section, read.Name, "performance", $"{usual.Performance_frac}");
        return ApplianceKeys.Over(section, read);
    }
}
