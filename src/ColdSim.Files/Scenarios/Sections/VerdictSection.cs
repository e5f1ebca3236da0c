using ColdSim.Files.Quantities;
using ColdSim.Planning.Nights;
using UnitsNet;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[verdict]</c>: what holding, short and dry mean here.</summary>
internal static class VerdictSection
{
    private static readonly QuantityKey ShortAllowance = new("short_allowance", Dimension.Duration, "0 s", "12 h");
    private static readonly QuantityKey BelowSetPoint = new("below_set_point", Dimension.TemperatureDifference, "0 K", "30 K");
    private static readonly QuantityKey Undersupplied = new("undersupplied", Dimension.Ratio, "0.01", "1");

    public static NightCriteria Read(SectionReader section)
    {
        NightCriteria defaults = new();
        NightCriteria criteria = new()
        {
            ShortAllowance = section.Get(ShortAllowance) is { } allowed ? Duration.FromSeconds(allowed) : defaults.ShortAllowance,
            BelowSetPoint = section.Get(BelowSetPoint) is { } below ? TemperatureDelta.FromKelvins(below) : defaults.BelowSetPoint,
            Undersupplied = section.Get(Undersupplied) is { } part ? Ratio.FromDecimalFractions(part) : defaults.Undersupplied,
            Dawn = section.Clock("dawn") ?? defaults.Dawn,
        };
        section.Finish();
        return criteria;
    }
}
