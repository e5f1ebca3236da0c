using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Planning;
using UnitsNet;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[verdict]</c>: what holding, short and dry mean here.</summary>
internal static class VerdictSection
{
    private static readonly NightCriteria Usual = new();

    private static readonly QuantityKey ShortAllowance = new(
        "short_allowance", Dimension.Duration, "0 s", "12 h", KeyDefault.Of(Usual.ShortAllowance.Seconds, "min"),
        "undersupply in a night that still counts as holding");

    private static readonly QuantityKey BelowSetPoint = new(
        "below_set_point", Dimension.TemperatureDifference, "0 K", "30 K", KeyDefault.Of(Usual.BelowSetPoint.Kelvins, "K"),
        "fall below the set point for want of gas that still counts as holding");

    private static readonly QuantityKey Undersupplied = new(
        "undersupplied", Dimension.Ratio, "0.01", "1", KeyDefault.Of(Usual.Undersupplied.DecimalFractions, "%"),
        "part of the asked gas below which an appliance is undersupplied");

    private static readonly TimeKey Dawn = new("dawn", KeyDefault.Of(Usual.Dawn.ToString("HH:mm", CultureInfo.InvariantCulture)), "when \"left at dawn\" is read");

    public static readonly ScenarioSection Declared = new(
        "verdict", TableForm.One, "what holding, short and dry mean here", [ShortAllowance, BelowSetPoint, Undersupplied, Dawn])
    {
        FixedForOptions = true,
    };

    public static NightCriteria Read(SectionReader section)
    {
        NightCriteria criteria = new()
        {
            ShortAllowance = section.Get(ShortAllowance) is { } allowed ? Duration.FromSeconds(allowed) : Usual.ShortAllowance,
            BelowSetPoint = section.Get(BelowSetPoint) is { } below ? TemperatureDelta.FromKelvins(below) : Usual.BelowSetPoint,
            Undersupplied = section.Get(Undersupplied) is { } part ? Ratio.FromDecimalFractions(part) : Usual.Undersupplied,
            Dawn = section.Get(Dawn) ?? Usual.Dawn,
        };
        section.Finish();
        return criteria;
    }
}
