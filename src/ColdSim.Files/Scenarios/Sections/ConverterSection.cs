using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[converter]</c>: what charges the battery from shore power or a generator.</summary>
internal static class ConverterSection
{
    private static readonly ConverterSpecification Usual = new();

    private static readonly QuantityKey Rated = new("rated", Dimension.Current, "1 A", "300 A", KeyDefault.Of(Usual.Rated_A, "A"), "most it gives");

    private static readonly QuantityKey Efficiency = new(
        "efficiency", Dimension.Ratio, "0.4", "1", KeyDefault.Of(Usual.Efficiency_frac, ""), "power out over power in");

    public static readonly ScenarioSection Declared = new(
        "converter", TableForm.One, "what charges the battery from shore power or a generator", [Rated, Efficiency]);

    public static ConverterSpecification Read(SectionReader section)
    {
        ConverterSpecification converter = new()
        {
            Rated_A = section.GetOrDefault(Rated),
            Efficiency_frac = section.GetOrDefault(Efficiency),
        };
        section.Finish();
        return converter;
    }
}
