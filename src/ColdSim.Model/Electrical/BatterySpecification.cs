using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Electrical;

/// <summary>A bank of batteries by its plate. SI units; charge as energy at <see cref="NominalVoltage"/>.</summary>
public sealed record BatterySpecification
{
    /// <summary>Chemistry.</summary>
    public required BatteryChemistry Chemistry { get; init; }

    /// <summary>Rated charge at the twenty-hour rate and 25 °C. [J]</summary>
    public required double Rated_J { get; init; }

    /// <summary>Part of what it can give at its temperature that is used before it counts as flat, 0 to 1.</summary>
    public required double UsableDepth_frac { get; init; }

    /// <summary>Peukert's exponent, 1 to 1.3.</summary>
    public required double PeukertExponent { get; init; }

    /// <summary>Charge stored per charge sent in.</summary>
    public required double ChargeEfficiency_frac { get; init; }

    /// <summary>Charging while it is far from full, per rated charge. [1/h]</summary>
    public required double BulkRate_1_h { get; init; }

    /// <summary>State of charge up to which it takes that, 0 to 1.</summary>
    public required double BulkUntil_frac { get; init; }

    /// <summary>Charging just before it is full, per rated charge. [1/h]</summary>
    public required double LastRate_1_h { get; init; }

    /// <summary>Temperature below which its electronics let it give nothing; 0 where there is no such limit. [K]</summary>
    public double LowestDischarge_K { get; init; }

    /// <summary>Charge at the start, per rated.</summary>
    public double InitialCharge_frac { get; init; } = 1;

    /// <summary>Whether it is inside the coach; outside otherwise.</summary>
    public bool Inside { get; init; } = true;

    /// <summary>Charge above the flat one, per rated, at which what it feeds is connected again.</summary>
    public double Reconnect_frac { get; init; } = 0.05;

    /// <summary>A full bank with what is usual for its chemistry.</summary>
    /// <remarks>
    /// The trade's figures, from memory: half of a lead-acid bank is used and most of a lithium one; exponents of Peukert 1.2 to 1.3
    /// (flooded), 1.1 to 1.25 (gel), 1.05 to 1.15 (glass mat), 1.0 to 1.05 (lithium); charge efficiencies 0.85 to 0.95 and 0.99; a
    /// lead-acid bank takes its bulk current to about 80 % and some 5 % of its capacity near full, a lithium one to 95 %.
    /// </remarks>
    /// <param name="chemistry">Chemistry.</param>
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
            LowestDischarge_K = ZeroCelsius_K - 20,
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

/// <summary>Chemistry of a battery.</summary>
public enum BatteryChemistry
{
    /// <summary>Lead-acid with liquid electrolyte.</summary>
    Flooded,

    /// <summary>Lead-acid with the electrolyte held in glass mat.</summary>
    Agm,

    /// <summary>Lead-acid with the electrolyte set to a gel.</summary>
    Gel,

    /// <summary>Lithium iron phosphate.</summary>
    LithiumIronPhosphate,
}
