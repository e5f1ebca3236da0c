using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Model.Electrical;

/// <summary>The one voltage at which charge is counted as energy.</summary>
/// <remarks>
/// Batteries, fans and converters are known by their charge and current, and their voltages move together: a bank is followed by its
/// charge, and every watt and watt-hour of the 12 V side is a current or a charge times this.
/// </remarks>
internal static class NominalVoltage
{
    /// <summary>Nominal voltage. [V]</summary>
    public const double Bus_V = 12;

    /// <summary>Energy of an ampere-hour. [J]</summary>
    public const double AmpereHour_J = Bus_V * AmpereHour_C;
}
