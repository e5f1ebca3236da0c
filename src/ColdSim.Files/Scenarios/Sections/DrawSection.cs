using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Appliances;
using ColdSim.Model.Gas;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[[draw]]</c>: gas drawn at a known rate, by heat or by mass.</summary>
internal static class DrawSection
{
    private static readonly ConstantDraw Usual = new() { Name = "", Input_W = 0 };

    public static readonly TextKey Name = OwnNames.Key("draw 1", ApplianceKeys.AnotherName);

    private static readonly QuantityKey Rate = new(
        "rate", [new(Dimension.Power, "1 W", "500 kW"), new(Dimension.MassFlow, "0.1 g/h", "40 kg/h")], KeyDefault.Needed, "gas it takes while it runs");

    private static readonly SpansKey Hours = new("hours", KeyDefault.Of("always"), "when it runs");

    private static readonly QuantityKey FullPressure = ApplianceKeys.Full("delivery pressure from which it takes its rate");

    private static readonly QuantityKey MinimumPressure = ApplianceKeys.Minimum("below it, its flame is lost");

    private static readonly FlagKey NeedsPower = new(
        "needs_power", Usual.NeedsPower, "whether its valve or board needs 12 V: with a `[battery]` it is out while voltage is gone");

    private static readonly QuantityKey HeatToCoach = new(
        "heat_to_coach", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.HeatToCoach_frac, ""), "part of its heat that warms the coach");

    public static readonly ScenarioSection Declared = new(
        "draw", TableForm.Many, "gas drawn at a known rate, by heat or by mass",
        [Name, Rate, Hours, FullPressure, MinimumPressure, NeedsPower, HeatToCoach, ApplianceKeys.Off]);

    public static ConstantDraw Read(SectionReader section, GasSpecification gas, int number, OwnNames names)
    {
        ConstantDraw draw = new()
        {
            Name = names.Counted(section, Name, "draw", number),
            Input_W = ReadRate(section, gas),
            Hours = section.Get(Hours) ?? Usual.Hours,
            FullPressure_Pa = section.GetOrDefault(FullPressure),
            MinimumPressure_Pa = section.GetOrDefault(MinimumPressure),
            NeedsPower = section.GetOrDefault(NeedsPower),
            HeatToCoach_frac = section.GetOrDefault(HeatToCoach),
        };
        bool off = section.GetOrDefault(ApplianceKeys.Off);
        section.Finish();
        if (draw.MinimumPressure_Pa > draw.FullPressure_Pa)
            section.Report(MinimumPressure, "the minimum pressure is above the full pressure");
        return off ? (ConstantDraw)draw.Shut() : draw;
    }

    private static double ReadRate(SectionReader section, GasSpecification gas)
    {
        if (!section.Has(Rate))
            section.Lacks(Rate, "accepted: heat such as \"1,500 BTU/h\", or mass such as \"0.1 lb/h\"");
        double? rate = section.Get(Rate, out QuantityRange range);
        return rate * (range.Dimension == Dimension.MassFlow ? gas.PlateHeatingValue_J_kg : 1) ?? double.NaN;
    }
}
