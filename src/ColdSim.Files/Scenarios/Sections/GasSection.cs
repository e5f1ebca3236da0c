using ColdSim.Files.Quantities;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[gas]</c>: the fuel.</summary>
internal static class GasSection
{
    private static readonly QuantityKey HeatingValue = new("heating_value", Dimension.HeatingValue, "45 MJ/kg", "52 MJ/kg");

    public static GasSpecification Read(SectionReader section)
    {
        GasSpecification gas = new() { HeatingValue_J_kg = section.Get(HeatingValue, new GasSpecification().HeatingValue_J_kg) };
        section.Finish();
        return gas;
    }
}
