using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Model.Electrical;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[battery]</c>: the bank, by its chemistry and capacity.</summary>
internal static class BatterySection
{
    private static readonly KeyDefault ByChemistry = KeyDefault.Of("by chemistry");

    private static readonly BatterySpecification Flooded = BatterySpecification.Of(BatteryChemistry.Flooded, 0);
    private static readonly BatterySpecification Lithium = BatterySpecification.Of(BatteryChemistry.LithiumIronPhosphate, 0);

    private static readonly ChoiceKey<BatteryChemistry> Chemistry = new(
        "chemistry", KeyDefault.Needed, "what it is made of; \"lithium\", \"LiFePO4\" and \"LFP\" are lithium iron phosphate, \"wet\" is flooded",
        ("flooded", BatteryChemistry.Flooded), ("agm", BatteryChemistry.Agm), ("gel", BatteryChemistry.Gel),
        ("lithium iron phosphate", BatteryChemistry.LithiumIronPhosphate))
    {
        OtherWords =
        [
            ("lithium", BatteryChemistry.LithiumIronPhosphate), ("LiFePO4", BatteryChemistry.LithiumIronPhosphate),
            ("LFP", BatteryChemistry.LithiumIronPhosphate), ("lithium iron", BatteryChemistry.LithiumIronPhosphate),
            ("wet", BatteryChemistry.Flooded), ("absorbed glass mat", BatteryChemistry.Agm),
        ],
    };

    private static readonly QuantityKey Capacity = new(
        "capacity", Dimension.Charge, "1 Ah", "5,000 Ah", KeyDefault.Needed, "of the whole bank, at the twenty-hour rate");

    private static readonly QuantityKey Charge = new(
        "charge", Dimension.Ratio, "0", "1", KeyDefault.Called(Flooded.InitialCharge_frac, "full"), "state of charge at the start")
    {
        Assumed = "battery: charge at the start not given; assumed {value}",
    };

    private static readonly QuantityKey UsableDepth = new(
        "usable_depth", Dimension.Ratio, "0.05", "1", KeyDefault.Of($"{NumberShown.Of(Flooded.UsableDepth_frac)}, lithium {NumberShown.Of(Lithium.UsableDepth_frac)}"),
        "part of what it can give at its temperature that is used before voltage counts as gone")
    {
        Assumed = "battery: {value} of what it can give is used before voltage counts as gone",
    };

    private static readonly NumberKey Peukert = new("peukert", 1, 1.6, ByChemistry, "Peukert's exponent");

    private static readonly QuantityKey ChargeEfficiency = new(
        "charge_efficiency", Dimension.Ratio, "0.5", "1", ByChemistry, "charge stored per charge sent in");

    private static readonly QuantityKey BulkCurrent = new(
        "bulk_current", Dimension.Current, "0.1 A", "2,000 A", ByChemistry, "most it takes while it is warm and far from full");

    private static readonly QuantityKey LowestDischarge = new(
        "lowest_discharge", Dimension.Temperature, "-60 °C", "10 °C",
        KeyDefault.Of($"lithium {NumberShown.Of(Lithium.LowestDischarge_K, Dimension.Temperature, "°C")}, else none"),
        "below it its electronics let it give nothing");

    private static readonly ChoiceKey<bool> Stands = new(
        "stands", Flooded.Inside, "whose air it has the temperature of", ("inside", true), ("outside", false))
    {
        Assumed = "battery: place not given; assumed {value} the coach",
    };

    private static readonly QuantityKey Reconnect = new(
        "reconnect", Dimension.Ratio, "0", "0.5", KeyDefault.Of(Flooded.Reconnect_frac, ""),
        "charge above the flat one, of the capacity, at which voltage is back");

    public static readonly ScenarioSection Declared = new(
        "battery", TableForm.One, "the battery bank, by its chemistry and capacity",
        [Chemistry, Capacity, Charge, UsableDepth, Peukert, ChargeEfficiency, BulkCurrent, LowestDischarge, Stands, Reconnect]);

    public static BatterySpecification Read(SectionReader section)
    {
        BatteryChemistry? chemistry = section.Get(Chemistry);
        if (section.Present && !section.Has(Chemistry))
            section.Lacks(Chemistry, "accepted: " + Chemistry.Accepted);
        double capacity_C = section.Present ? section.Require(Capacity) : section.Get(Capacity, double.NaN);
        BatterySpecification usual = BatterySpecification.Of(chemistry ?? BatteryChemistry.Flooded, capacity_C * NominalVoltage.Bus_V);
        BatterySpecification battery = usual with
        {
            InitialCharge_frac = section.GetOrDefault(Charge),
            UsableDepth_frac = section.Get(UsableDepth, usual.UsableDepth_frac),
            PeukertExponent = section.Get(Peukert) ?? usual.PeukertExponent,
            ChargeEfficiency_frac = section.Get(ChargeEfficiency, usual.ChargeEfficiency_frac),
            BulkRate_1_h = section.Get(BulkCurrent) is { } bulk_A ? bulk_A * 3600 / capacity_C : usual.BulkRate_1_h,
            LowestDischarge_K = section.Get(LowestDischarge, usual.LowestDischarge_K),
            Inside = section.GetOrDefault(Stands),
            Reconnect_frac = section.GetOrDefault(Reconnect),
        };
        section.Finish();
        if (!section.Present)
            return battery;
        section.Assume(Charge, "battery");
        section.Assume(UsableDepth, "battery", $"{usual.UsableDepth_frac * 100:0} %");
        section.Assume(Stands, "battery");
        return battery with { LastRate_1_h = Math.Min(battery.LastRate_1_h, battery.BulkRate_1_h) };
    }
}
