using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Nodes;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[wet_bay]]</c>: an enclosed belly or compartment with pipes and tanks in it.</summary>
internal static class WetBaySection
{
    public static readonly TextKey Name = new("name", KeyDefault.Of("\"wet bay\""), "what it is called, for `where`") { Such = "belly" };

    private static readonly QuantityKey ToInside = new(
        "to_inside", Dimension.Conductance, "0 W/K", "200 W/K", KeyDefault.Quantity("3 W/K"), "to the coach's air")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey ToOutside = new(
        "to_outside", Dimension.Conductance, "0.1 W/K", "200 W/K", KeyDefault.Quantity("8 W/K"), "to outside air")
    { Assumed = ScenarioKey.NotGiven };

    private static readonly QuantityKey Capacity = new(
        "capacity", Dimension.HeatCapacity, "2 kJ/K", "5 MJ/K", KeyDefault.Quantity("20 kJ/K"), "of its air and walls, without the water in it")
    {
        Assumed = ScenarioKey.NotGiven,
    };

    public static readonly QuantityKey Duct = new(
        "duct", Dimension.Ratio, "0", "0.5", KeyDefault.Of(0, ""), "part of the furnace's heat that a duct brings here; all bays together at most 1")
    {
        Assumed = ScenarioKey.NotGiven + ", no heat from the furnace",
    };

    private static readonly QuantityKey Start = new(
        "temperature", Dimension.Temperature, "-40 °C", "40 °C", KeyDefault.Quantity("8 °C"), "at the start")
    {
        Assumed = ScenarioKey.NotGiven + " at the start",
    };

    public static readonly ScenarioSection Declared = new(
        "wet_bay", TableForm.Many, "an enclosed belly or compartment with pipes and tanks in it", [Name, ToInside, ToOutside, Capacity, Duct, Start]);

    public static ThermalNode Read(SectionReader section, int number)
    {
        string name = OwnNames.Named(section, Name, "wet bay", number);
        ThermalNode bay = new()
        {
            Name = name,
            Capacity_J_K = section.GetOrDefault(Capacity),
            Inside_W_K = section.GetOrDefault(ToInside),
            Outside_W_K = section.GetOrDefault(ToOutside),
            Duct_frac = section.GetOrDefault(Duct),
            Initial_K = section.GetOrDefault(Start),
        };
        section.Finish();
        if (name.Trim().ToUpperInvariant() is "INSIDE" or "OUTSIDE")
            section.Reading.Report(section.ValuePlace(Name), $"'name' is \"{Quote.Of(name)}\", which is another place", "accepted: any other name");
        section.Assume(ToInside, name);
        section.Assume(ToOutside, name);
        section.Assume(Capacity, name);
        section.Assume(Duct, name);
        section.Assume(Start, name);
        return bay;
    }
}
