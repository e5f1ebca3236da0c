using ColdSim.Model.Appliances;

namespace ColdSim.Model.Furnace;

/// <summary>A forced-air furnace by its plate and its ignition board. SI units, pressures gauge.</summary>
public sealed record FurnaceSpecification
{
    /// <summary>Input at sea level, on gross heating value, as on the plate. [W]</summary>
    public required double Input_W { get; init; }

    /// <summary>Heat to the coach per gross heat of gas.</summary>
    public double Efficiency_frac { get; init; } = 0.77;

    /// <summary>What the fan draws at 12 V; null for what is usual for its input. [A]</summary>
    public double? FanCurrent_A { get; init; }

    /// <summary>How altitude lowers the input.</summary>
    public AltitudeRule Altitude { get; init; } = AltitudeRule.FixedOrifice;

    /// <summary>Delivery pressure from which the input is full. [Pa gauge]</summary>
    public double FullPressure_Pa { get; init; } = 10.5 * 249.08890833333;

    /// <summary>Delivery pressure below which it does not ignite. [Pa gauge]</summary>
    public double IgnitionPressure_Pa { get; init; } = 8.0 * 249.08890833333;

    /// <summary>Delivery pressure below which a burning flame is lost. [Pa gauge]</summary>
    public double DropOutPressure_Pa { get; init; } = 6.5 * 249.08890833333;

    /// <summary>Fan before the first spark. [s]</summary>
    public double PrePurge_s { get; init; } = 17;

    /// <summary>Longest open valve without a flame. [s]</summary>
    public double TrialForIgnition_s { get; init; } = 7;

    /// <summary>Fan between tries. [s]</summary>
    public double RetryPurge_s { get; init; } = 15;

    /// <summary>Tries before lockout.</summary>
    public int Tries { get; init; } = 3;

    /// <summary>Lockout until the board tries again by itself. [s]</summary>
    public double Lockout_s { get; init; } = 3600;

    /// <summary>Fan after the flame. [s]</summary>
    public double PostPurge_s { get; init; } = 90;
}
