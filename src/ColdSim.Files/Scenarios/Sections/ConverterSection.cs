using ColdSim.Files.Quantities;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[converter]</c>: what charges the battery from shore power or a generator.</summary>
internal static class ConverterSection
{
    private static readonly QuantityKey Rated = new("rated", Dimension.Current, "1 A", "300 A");
    private static readonly QuantityKey Efficiency = new("efficiency", Dimension.Ratio, "0.4", "1");

    public static ConverterSpecification Read(SectionReader section)
    {
        ConverterSpecification defaults = new();
        ConverterSpecification converter = new()
        {
            Rated_A = section.Get(Rated, defaults.Rated_A),
            Efficiency_frac = section.Get(Efficiency, defaults.Efficiency_frac),
        };
        section.Finish();
        return converter;
    }
}
