using ColdSim.Files.Quantities;
using ColdSim.Model.Gas;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[gas]</c>: the fuel.</summary>
internal static class GasSection
{
    private static readonly QuantityKey HeatingValue = new("heating_value", Dimension.HeatingValue, "45 MJ/kg", "52 MJ/kg");

    public static (GasSpecification Gas, Prices Prices) Read(SectionReader section)
    {
        GasSpecification gas = new() { HeatingValue_J_kg = section.Get(HeatingValue, new GasSpecification().HeatingValue_J_kg) };
        Prices defaults = new();
        Prices prices = new() { Gas = section.Price("price", each: false), Currency = section.Currency("currency") ?? defaults.Currency };
        section.Finish();
        return (gas, prices);
    }
}
