using ColdSim.Files.Quantities;
using ColdSim.Files.Toml;
using ColdSim.Model.Appliances;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[draw]]</c>: gas drawn at a known rate, by heat or by mass.</summary>
internal static class DrawSection
{
    private static readonly QuantityKey RateByHeat = new("rate", Dimension.Power, "1 W", "500 kW");
    private static readonly QuantityKey RateByMass = new("rate", Dimension.MassFlow, "0.1 g/h", "40 kg/h");
    private static readonly QuantityKey FullPressure = new("full_pressure", Dimension.Pressure, "100 Pa", "10 kPa");
    private static readonly QuantityKey MinimumPressure = new("minimum_pressure", Dimension.Pressure, "0 Pa", "10 kPa");
    private static readonly QuantityKey HeatToCoach = new("heat_to_coach", Dimension.Ratio, "0", "1");

    public static ConstantDraw Read(SectionReader section, GasSpecification gas, int number, OwnNames names)
    {
        ConstantDraw defaults = new() { Name = "", Input_W = 0 };
        ConstantDraw draw = new()
        {
            Name = names.Counted(section, "draw", number),
            Input_W = Rate(section, gas),
            Hours = section.Spans("hours") ?? defaults.Hours,
            FullPressure_Pa = section.Get(FullPressure, defaults.FullPressure_Pa),
            MinimumPressure_Pa = section.Get(MinimumPressure, defaults.MinimumPressure_Pa),
            NeedsPower = section.Flag("needs_power") ?? defaults.NeedsPower,
            HeatToCoach_frac = section.Get(HeatToCoach, defaults.HeatToCoach_frac),
        };
        section.Finish();
        if (draw.MinimumPressure_Pa > draw.FullPressure_Pa)
            section.Report("minimum_pressure", "the minimum pressure is above the full pressure");
        return draw;
    }

    private static double Rate(SectionReader section, GasSpecification gas)
    {
        if (!section.Has("rate"))
            section.Lacks("rate", "accepted: heat such as \"1,500 BTU/h\", or mass such as \"0.1 lb/h\"");
        bool byMass = section.Value("rate") is TomlText text && SiText.Read(text.Value, Dimension.MassFlow, out _) is null;
        return (byMass ? section.Get(RateByMass) * gas.PlateHeatingValue_J_kg : section.Get(RateByHeat)) ?? double.NaN;
    }
}
