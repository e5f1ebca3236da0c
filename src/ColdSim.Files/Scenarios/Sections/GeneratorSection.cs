using ColdSim.Files.Quantities;
using ColdSim.Model.Electrical;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[generator]</c>: a propane generator on the cylinders' gas.</summary>
internal static class GeneratorSection
{
    private const double Kilowatt = 1000;
    private static readonly QuantityKey Rated = new("rated", Dimension.Power, "100 W", "30 kW");
    private static readonly QuantityKey IdleGas = new("idle_gas", Dimension.MassFlow, "1 g/h", "20 kg/h");
    private static readonly QuantityKey GasPerKilowatt = new("gas_per_kilowatt", Dimension.MassFlow, "1 g/h", "5 kg/h");
    private static readonly QuantityKey AltitudeLoss = new("altitude_loss", Dimension.Ratio, "0", "0.1");
    private static readonly QuantityKey OtherLoad = new("other_load", Dimension.Power, "0 W", "30 kW");
    private static readonly QuantityKey StartBelow = new("start_below", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey StopAbove = new("stop_above", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey FullPressure = new("full_pressure", Dimension.Pressure, "100 Pa", "10 kPa");
    private static readonly QuantityKey MinimumPressure = new("minimum_pressure", Dimension.Pressure, "0 Pa", "10 kPa");

    public static GeneratorSpecification? Read(SectionReader section, GasSpecification gas)
    {
        GeneratorSpecification defaults = new() { Rated_W = 0 };
        GeneratorSpecification generator = new()
        {
            Rated_W = section.Present ? section.Require(Rated) : section.Get(Rated, 0),
            IdleInput_W = section.Get(IdleGas) * gas.HeatingValue_J_kg ?? defaults.IdleInput_W,
            InputPerLoad = section.Get(GasPerKilowatt) * gas.HeatingValue_J_kg / Kilowatt ?? defaults.InputPerLoad,
            LossPerThousandFeet_frac = section.Get(AltitudeLoss, defaults.LossPerThousandFeet_frac),
            OtherLoad_W = section.Get(OtherLoad, defaults.OtherLoad_W),
            StartBelow_frac = section.Get(StartBelow, defaults.StartBelow_frac),
            StopAbove_frac = section.Get(StopAbove, defaults.StopAbove_frac),
            Hours = section.Spans("hours") ?? defaults.Hours,
            FullPressure_Pa = section.Get(FullPressure, defaults.FullPressure_Pa),
            MinimumPressure_Pa = section.Get(MinimumPressure, defaults.MinimumPressure_Pa),
        };
        section.Finish();
        if (!section.Present)
            return null;
        if (generator.StartBelow_frac >= generator.StopAbove_frac)
            section.Report("start_below", "the generator would start above where it stops");
        if (generator.MinimumPressure_Pa > generator.FullPressure_Pa)
            section.Report("minimum_pressure", "the minimum pressure is above the full pressure");
        if (!section.Has("start_below") && !section.Has("stop_above"))
            section.Reading.Assume($"generator: runs from {defaults.StartBelow_frac * 100:0} to {defaults.StopAbove_frac * 100:0} % of the battery's usable charge");
        return generator;
    }
}
