using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Gas;
using ColdSim.Model.Supply;
using ColdSim.Physics.Units;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[regulator]</c>: a two-stage regulator by its plate.</summary>
internal static class RegulatorSection
{
    private static readonly RegulatorSpecification Usual = new();
    private static readonly double PropaneHeat_J_kg = new GasSpecification().HeatingValue_J_kg;

    private static readonly QuantityKey RatedInlet = new(
        "rated_inlet", Dimension.Pressure, "20 kPa", "2 MPa", KeyDefault.Of(Usual.RatedInlet_Pa, "psi"), "inlet pressure at which it gives that flow");

    private static readonly QuantityKey RatedFlow = new(
        "rated_flow", [new(Dimension.Power, "1 kW", "500 kW"), new(Dimension.MassFlow, "0.08 kg/h", "35 kg/h")], KeyDefault.Of(Usual.RatedFlow_W, "BTU/h"),
        "flow on the plate, as heat or as mass of propane")
    {
        Assumed = "regulator: rated_flow not given; assumed {value}",
    };

    internal static readonly QuantityKey SetPoint = new(
        "set_point", Dimension.Pressure, "1 kPa", "15 kPa", KeyDefault.Of(Usual.SetPoint_Pa, "inH2O"), "delivery pressure");

    private static readonly QuantityKey Droop = new(
        "droop", Dimension.Pressure, "10 Pa", "2 kPa", KeyDefault.Of(Usual.Droop_Pa, "inH2O"), "fall of delivery at the rated flow");

    private static readonly QuantityKey Intermediate = new(
        "intermediate", Dimension.Pressure, "10 kPa", "300 kPa", KeyDefault.Of(Usual.Intermediate_Pa, "psi"), "between the stages");

    private static readonly QuantityKey IntermediateDroop = new(
        "intermediate_droop", Dimension.Pressure, "100 Pa", "100 kPa", KeyDefault.Of(Usual.IntermediateDroop_Pa, "psi"), "the same fall between the stages");

    private static readonly QuantityKey MinimumInlet = new(
        "minimum_inlet", Dimension.Pressure, "1 psi", "300 kPa", KeyDefault.Of("5 psi; 10 psi on a changeover (common practice, no source)"),
        "least inlet pressure on the plate; below it nothing is promised")
    {
        Assumed = "regulator: minimum_inlet not given; assumed {value}, common practice without a source",
    };

    private static readonly ChoiceKey<bool> BelowMinimum = new(
        "below_minimum", false, "what it gives below `minimum_inlet`: as the spring law goes on, with a caution, or nothing",
        ("spring law", false), ("nothing", true));

    private static readonly QuantityKey PigtailLoss = new(
        "pigtail_loss", Dimension.Pressure, "0 kPa", "100 kPa", KeyDefault.Of(Usual.PigtailLoss_Pa, "psi"),
        "pressure lost between each cylinder and the regulator at the rated flow and inlet");

    private static readonly QuantityKey HoseLoss = new(
        "hose_loss", Dimension.Pressure, "0 kPa", "2 kPa", KeyDefault.Of(Usual.HoseLoss_Pa, "inH2O"),
        "pressure lost in hose and pipe between the regulator and the appliances at the rated flow");

    public static readonly ScenarioSection Declared = new(
        "regulator", TableForm.One, "a two-stage regulator by its plate",
        [RatedFlow, RatedInlet, MinimumInlet, BelowMinimum, SetPoint, Droop, Intermediate, IntermediateDroop, PigtailLoss, HoseLoss]);

    // A plate's mass is of propane, whatever flows through it.
    private static double Flow_W(SectionReader section)
        => section.Get(RatedFlow, out QuantityRange range) is { } flow
            ? range.Dimension == Dimension.MassFlow ? flow * PropaneHeat_J_kg : flow
            : Usual.RatedFlow_W;

    public static RegulatorSpecification Read(SectionReader section, bool changeover)
    {
        section.Assume(MinimumInlet, "regulator", $"{Usual.MinimumInletOf_Pa(changeover) / ConversionFactors.Psi_Pa:0} psi");
        section.Assume(RatedFlow, "regulator", $"{Usual.RatedFlow_W / ConversionFactors.BtuPerHour_W:0} BTU/h at {RatedInlet.DefaultShown}");
        RegulatorSpecification regulator = new()
        {
            RatedFlow_W = Flow_W(section),
            RatedInlet_Pa = section.GetOrDefault(RatedInlet),
            SetPoint_Pa = section.GetOrDefault(SetPoint),
            Droop_Pa = section.GetOrDefault(Droop),
            Intermediate_Pa = section.GetOrDefault(Intermediate),
            IntermediateDroop_Pa = section.GetOrDefault(IntermediateDroop),
            MinimumInlet_Pa = section.Get(MinimumInlet),
            ShutsBelowMinimum = section.GetOrDefault(BelowMinimum),
            PigtailLoss_Pa = section.GetOrDefault(PigtailLoss),
            HoseLoss_Pa = section.GetOrDefault(HoseLoss),
        };
        section.Finish();
        if (regulator.Droop_Pa >= regulator.SetPoint_Pa)
            section.Report(Droop, "the droop is not smaller than the set point");
        if (regulator.IntermediateDroop_Pa >= regulator.Intermediate_Pa)
            section.Report(IntermediateDroop, "the intermediate droop is not smaller than the intermediate pressure");
        if (regulator.Intermediate_Pa <= regulator.SetPoint_Pa)
            section.Report(Intermediate, "the intermediate pressure is not above the set point");
        if (regulator.RatedInlet_Pa <= regulator.Intermediate_Pa - regulator.IntermediateDroop_Pa)
            section.Report(RatedInlet, "the rated inlet is not above the intermediate pressure");
        if (regulator.MinimumInlet_Pa > regulator.RatedInlet_Pa)
            section.Report(MinimumInlet, "the minimum inlet is above the rated inlet");
        if (regulator.HoseLoss_Pa >= regulator.SetPoint_Pa)
            section.Report(HoseLoss, "the hose loses all of the delivery pressure");
        return regulator;
    }
}
