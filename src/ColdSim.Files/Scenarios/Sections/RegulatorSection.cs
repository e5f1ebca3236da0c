using ColdSim.Files.Quantities;
using ColdSim.Model.Supply;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[regulator]</c>: a two-stage regulator by its plate.</summary>
internal static class RegulatorSection
{
    private static readonly QuantityKey RatedFlow = new("rated_flow", Dimension.Power, "1 kW", "500 kW");
    private static readonly QuantityKey RatedInlet = new("rated_inlet", Dimension.Pressure, "20 kPa", "2 MPa");
    private static readonly QuantityKey SetPoint = new("set_point", Dimension.Pressure, "1 kPa", "15 kPa");
    private static readonly QuantityKey Droop = new("droop", Dimension.Pressure, "10 Pa", "2 kPa");
    private static readonly QuantityKey Intermediate = new("intermediate", Dimension.Pressure, "10 kPa", "300 kPa");
    private static readonly QuantityKey IntermediateDroop = new("intermediate_droop", Dimension.Pressure, "100 Pa", "100 kPa");

    public static RegulatorSpecification Read(SectionReader section)
    {
        RegulatorSpecification defaults = new();
        if (!section.Has("rated_flow"))
        {
            section.Reading.Assume(
                $"regulator: rated_flow not given, taken as {defaults.RatedFlow_W / 0.29307107017222:0} BTU/h at {defaults.RatedInlet_Pa / 6894.757293168361:0} psi");
        }
        RegulatorSpecification regulator = new()
        {
            RatedFlow_W = section.Get(RatedFlow, defaults.RatedFlow_W),
            RatedInlet_Pa = section.Get(RatedInlet, defaults.RatedInlet_Pa),
            SetPoint_Pa = section.Get(SetPoint, defaults.SetPoint_Pa),
            Droop_Pa = section.Get(Droop, defaults.Droop_Pa),
            Intermediate_Pa = section.Get(Intermediate, defaults.Intermediate_Pa),
            IntermediateDroop_Pa = section.Get(IntermediateDroop, defaults.IntermediateDroop_Pa),
        };
        section.Finish();
        if (regulator.Droop_Pa >= regulator.SetPoint_Pa)
            section.Report("droop", "the droop is not smaller than the set point");
        if (regulator.IntermediateDroop_Pa >= regulator.Intermediate_Pa)
            section.Report("intermediate_droop", "the intermediate droop is not smaller than the intermediate pressure");
        if (regulator.Intermediate_Pa <= regulator.SetPoint_Pa)
            section.Report("intermediate", "the intermediate pressure is not above the set point");
        if (regulator.RatedInlet_Pa <= regulator.Intermediate_Pa - regulator.IntermediateDroop_Pa)
            section.Report("rated_inlet", "the rated inlet is not above the intermediate pressure");
        return regulator;
    }
}
