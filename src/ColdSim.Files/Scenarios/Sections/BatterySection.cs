using ColdSim.Files.Quantities;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[battery]</c>: the bank, by its chemistry and capacity.</summary>
internal static class BatterySection
{
    private static readonly QuantityKey Capacity = new("capacity", Dimension.Charge, "1 Ah", "5,000 Ah");
    private static readonly QuantityKey Charge = new("charge", Dimension.Ratio, "0", "1");
    private static readonly QuantityKey UsableDepth = new("usable_depth", Dimension.Ratio, "0.05", "1");
    private static readonly QuantityKey ChargeEfficiency = new("charge_efficiency", Dimension.Ratio, "0.5", "1");
    private static readonly QuantityKey BulkCurrent = new("bulk_current", Dimension.Current, "0.1 A", "2,000 A");
    private static readonly QuantityKey Reconnect = new("reconnect", Dimension.Ratio, "0", "0.5");

    public static BatterySpecification Read(SectionReader section)
    {
        BatteryChemistry? chemistry = section.Choice(
            "chemistry", ("flooded", BatteryChemistry.Flooded), ("agm", BatteryChemistry.Agm), ("gel", BatteryChemistry.Gel),
            ("lithium iron phosphate", BatteryChemistry.LithiumIronPhosphate));
        if (section.Present && !section.Has("chemistry"))
            section.Lacks("chemistry", "accepted: \"flooded\", \"agm\", \"gel\", \"lithium iron phosphate\"");
        double capacity_C = section.Present ? section.Require(Capacity) : section.Get(Capacity, double.NaN);
        BatterySpecification usual = BatterySpecification.Of(chemistry ?? BatteryChemistry.Flooded, capacity_C * NominalVoltage.Bus_V);
        BatterySpecification battery = usual with
        {
            InitialCharge_frac = section.Get(Charge, usual.InitialCharge_frac),
            UsableDepth_frac = section.Get(UsableDepth, usual.UsableDepth_frac),
            PeukertExponent = section.Number("peukert", 1, 1.6) ?? usual.PeukertExponent,
            ChargeEfficiency_frac = section.Get(ChargeEfficiency, usual.ChargeEfficiency_frac),
            BulkRate_1_h = section.Get(BulkCurrent) is { } bulk_A ? bulk_A * 3600 / capacity_C : usual.BulkRate_1_h,
            Inside = section.Choice("stands", ("inside", true), ("outside", false)) ?? usual.Inside,
            Reconnect_frac = section.Get(Reconnect, usual.Reconnect_frac),
        };
        section.Finish();
        if (!section.Present)
            return battery;
        if (!section.Has("charge"))
            section.Reading.Assume($"battery: charge at the start not given, taken as full");
        if (!section.Has("usable_depth"))
            section.Reading.Assume($"battery: {usual.UsableDepth_frac * 100:0} % of what it can give is used before voltage counts as gone");
        if (!section.Has("stands"))
            section.Reading.Assume($"battery: where it stands not given, taken as inside the coach");
        return battery with { LastRate_1_h = Math.Min(battery.LastRate_1_h, battery.BulkRate_1_h) };
    }
}
