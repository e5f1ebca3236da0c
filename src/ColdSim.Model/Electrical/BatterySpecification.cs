namespace ColdSim.Model.Electrical;

/// <summary>A bank of batteries by its plate. SI units; charge as energy at <see cref="NominalVoltage"/>.</summary>
public sealed record BatterySpecification
{
    /// <summary>What it is made of.</summary>
    public required BatteryChemistry Chemistry { get; init; }

    /// <summary>Rated charge at the twenty-hour rate and 25 °C. [J]</summary>
    public required double Rated_J { get; init; }

    /// <summary>Part of what it can give at its temperature that is used before voltage is taken as gone, 0 to 1.</summary>
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

    /// <summary>Charge at the start, per rated.</summary>
    public double InitialCharge_frac { get; init; } = 1;

    /// <summary>Whether it stands in the coach; outside otherwise.</summary>
    public bool Inside { get; init; } = true;

    /// <summary>Charge above the flat one, per rated, at which what it feeds is connected again.</summary>
    public double Reconnect_frac { get; init; } = 0.05;
}
