namespace ColdSim.Model.Electrical;

/// <summary>A converter from shore power or generator power to 12 V. SI units.</summary>
/// <remarks>Usual: 30 to 60 A, 78 to 85 % of the mains power (from memory).</remarks>
public sealed record ConverterSpecification
{
    /// <summary>Highest output. [A]</summary>
    public double Rated_A { get; init; } = 45;

    /// <summary>Power out over power in.</summary>
    public double Efficiency_frac { get; init; } = 0.82;

    /// <summary>Voltage at which it gives. [V]</summary>
    public double Output_V { get; init; } = 13.6;

    /// <summary>Highest output at nominal voltage. [W]</summary>
    public double Rated_W => Rated_A * NominalVoltage.Bus_V;

    /// <summary>Power drawn from the mains. [W]</summary>
    /// <param name="given_W">Output at nominal voltage. [W]</param>
    public double Mains_W(double given_W) => given_W * Output_V / (NominalVoltage.Bus_V * Efficiency_frac);
}
