using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Electrical;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[generator]</c>: a propane generator on the cylinders' gas.</summary>
internal static class GeneratorSection
{
    private const double Kilowatt = 1000;

    private static readonly GeneratorSpecification Usual = new() { Rated_W = 0 };

    private static readonly QuantityKey Rated = new("rated", Dimension.Power, "100 W", "30 kW", KeyDefault.Needed, "at sea level");

    private static readonly QuantityKey IdleGas = new(
        "idle_gas", Dimension.MassFlow, "1 g/h", "20 kg/h", Gas(Usual.IdleInput_W), "gas at no load");

    private static readonly QuantityKey GasPerKilowatt = new(
        "gas_per_kilowatt", Dimension.MassFlow, "1 g/h", "5 kg/h", Gas(Usual.InputPerLoad * Kilowatt), "more gas for each kilowatt");

    private static readonly QuantityKey AltitudeLoss = new(
        "altitude_loss", Dimension.Ratio, "0", "0.1", KeyDefault.Of(Usual.LossPerThousandFeet_frac, "%"), "power lost for every 1,000 ft");

    private static readonly QuantityKey OtherLoad = new(
        "other_load", Dimension.Power, "0 W", "30 kW", KeyDefault.Of(Usual.OtherLoad_W, "W"), "other things it feeds while it runs");

    private static readonly QuantityKey StartBelow = new(
        "start_below", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.StartBelow_frac, "%"), "part of the battery's usable charge at which it starts")
    {
        Assumed = "generator: runs from {value} of the battery's usable charge",
    };

    private static readonly QuantityKey StopAbove = new(
        "stop_above", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.StopAbove_frac, "%"), "part of it at which it stops");

    private static readonly SpansKey Hours = new("hours", KeyDefault.Of("always"), "when it may run");

    private static readonly QuantityKey FullPressure = ApplianceKeys.Full("delivery pressure from which it takes its full gas");

    private static readonly QuantityKey MinimumPressure = ApplianceKeys.Minimum("below it, it dies; tried again after 10 min");

    public static readonly ScenarioSection Declared = new(
        "generator", TableForm.One, "a propane generator on the cylinders' gas",
        [Rated, IdleGas, GasPerKilowatt, AltitudeLoss, OtherLoad, StartBelow, StopAbove, Hours, FullPressure, MinimumPressure]);

    // The model has the heat of the gas, the plate its mass.
    private static KeyDefault Gas(double heat_W) => KeyDefault.Of(NumberShown.Of(heat_W / new GasSpecification().HeatingValue_J_kg, Dimension.MassFlow, "lb/h", decimals: 2));

    public static GeneratorSpecification? Read(SectionReader section, GasSpecification gas)
    {
        GeneratorSpecification generator = new()
        {
            Rated_W = section.Present ? section.Require(Rated) : section.Get(Rated, 0),
            IdleInput_W = section.Get(IdleGas) * gas.HeatingValue_J_kg ?? Usual.IdleInput_W,
            InputPerLoad = section.Get(GasPerKilowatt) * gas.HeatingValue_J_kg / Kilowatt ?? Usual.InputPerLoad,
            LossPerThousandFeet_frac = section.GetOrDefault(AltitudeLoss),
            OtherLoad_W = section.GetOrDefault(OtherLoad),
            StartBelow_frac = section.GetOrDefault(StartBelow),
            StopAbove_frac = section.GetOrDefault(StopAbove),
            Hours = section.Get(Hours) ?? Usual.Hours,
            FullPressure_Pa = section.GetOrDefault(FullPressure),
            MinimumPressure_Pa = section.GetOrDefault(MinimumPressure),
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (generator.StartBelow_frac >= generator.StopAbove_frac)
            section.Report(StartBelow, "the generator would start above where it stops");
        if (generator.MinimumPressure_Pa > generator.FullPressure_Pa)
            section.Report(MinimumPressure, "the minimum pressure is above the full pressure");
        if (!section.Has(StopAbove))
            section.Assume(StartBelow, "generator", $"{Usual.StartBelow_frac * 100:0} to {StopAbove.DefaultShown}");
        return generator;
    }
}
