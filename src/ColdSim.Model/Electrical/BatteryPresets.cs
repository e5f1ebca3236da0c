namespace ColdSim.Model.Electrical;

/// <summary>What is usual for a chemistry; every figure can be given instead.</summary>
/// <remarks>
/// The trade's figures, from memory: half of a lead-acid bank is used and most of a lithium one; exponents of Peukert 1.2 to 1.3
/// (flooded), 1.1 to 1.25 (gel), 1.05 to 1.15 (glass mat), 1.0 to 1.05 (lithium); charge efficiencies 0.85 to 0.95 and 0.99; a
/// lead-acid bank takes its bulk current to about 80 % and some 5 % of its capacity near full, a lithium one to 95 %.
/// </remarks>
public static class BatteryPresets
{
    /// <summary>A full bank of a chemistry.</summary>
    /// <param name="chemistry">What it is made of.</param>
    /// <param name="rated_J">Rated charge as energy at <see cref="NominalVoltage"/>. [J]</param>
    /// <exception cref="ArgumentOutOfRangeException">No such chemistry.</exception>
    public static BatterySpecification Of(BatteryChemistry chemistry, double rated_J) => chemistry switch
    {
        BatteryChemistry.Flooded => Lead(chemistry, rated_J, peukert: 1.25, efficiency: 0.85, bulk_1_h: 0.15),
        BatteryChemistry.Agm => Lead(chemistry, rated_J, peukert: 1.1, efficiency: 0.95, bulk_1_h: 0.25),
        BatteryChemistry.Gel => Lead(chemistry, rated_J, peukert: 1.15, efficiency: 0.9, bulk_1_h: 0.15),
        BatteryChemistry.LithiumIronPhosphate => new BatterySpecification
        {
            Chemistry = chemistry,
            Rated_J = rated_J,
            UsableDepth_frac = 0.9,
            PeukertExponent = 1.03,
            ChargeEfficiency_frac = 0.99,
            BulkRate_1_h = 0.5,
            BulkUntil_frac = 0.95,
            LastRate_1_h = 0.05,
        },
        _ => throw new ArgumentOutOfRangeException(nameof(chemistry), chemistry, "No such chemistry."),
    };

    private static BatterySpecification Lead(BatteryChemistry chemistry, double rated_J, double peukert, double efficiency, double bulk_1_h) => new()
    {
        Chemistry = chemistry,
        Rated_J = rated_J,
        UsableDepth_frac = 0.5,
        PeukertExponent = peukert,
        ChargeEfficiency_frac = efficiency,
        BulkRate_1_h = bulk_1_h,
        BulkUntil_frac = 0.8,
        LastRate_1_h = 0.05,
    };
}
