using ColdSim.Files.Quantities;
using ColdSim.Model.Nodes;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[wet_bay]]</c>: an enclosed belly or compartment with pipes and tanks in it.</summary>
internal static class WetBaySection
{
    private const double Inside_W_K = 3;
    private const double Outside_W_K = 8;
    private const double Capacity_kJ_K = 20;
    private const double Start_C = 8;

    private static readonly QuantityKey ToInside = new("to_inside", Dimension.Conductance, "0 W/K", "200 W/K");
    private static readonly QuantityKey ToOutside = new("to_outside", Dimension.Conductance, "0.1 W/K", "200 W/K");
    private static readonly QuantityKey Capacity = new("capacity", Dimension.HeatCapacity, "2 kJ/K", "5 MJ/K");
    private static readonly QuantityKey Duct = new("duct", Dimension.Ratio, "0", "0.5");
    private static readonly QuantityKey Start = new("temperature", Dimension.Temperature, "-40 °C", "40 °C");

    public static ThermalNode Read(SectionReader section, int number)
    {
        string name = ApplianceKeys.Name(section, "wet bay", number);
        ThermalNode bay = new()
        {
            Name = name,
            Capacity_J_K = section.Get(Capacity, Capacity_kJ_K * 1000),
            Inside_W_K = section.Get(ToInside, Inside_W_K),
            Outside_W_K = section.Get(ToOutside, Outside_W_K),
            Duct_frac = section.Get(Duct, 0),
            Initial_K = section.Get(Start, Start_C + 273.15),
        };
        section.Finish();
        if (name.Trim().ToUpperInvariant() is "INSIDE" or "OUTSIDE")
            section.Reading.Report(section.Value("name")!.Place, $"'name' is \"{name}\", which is another place", "accepted: any other name");
        ApplianceKeys.Assume(section, name, "to_inside", $"{Inside_W_K} W/K");
        ApplianceKeys.Assume(section, name, "to_outside", $"{Outside_W_K} W/K");
        ApplianceKeys.Assume(section, name, "capacity", $"{Capacity_kJ_K} kJ/K");
        ApplianceKeys.Assume(section, name, "duct", $"0, no heat from the furnace");
        ApplianceKeys.Assume(section, name, "temperature", $"{Start_C} °C at the start");
        return bay;
    }
}
