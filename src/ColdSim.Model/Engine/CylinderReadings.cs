using System.Runtime.CompilerServices;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>How one cylinder stands at an instant. SI units.</summary>
/// <param name="Propane_kg">Gas in it, liquid and vapour. [kg]</param>
/// <param name="Liquid_K">Liquid and shell. [K]</param>
/// <param name="Pressure_Pa">Its own pressure. [Pa gauge]</param>
/// <param name="FrostMass_kg_m2">Frost on the bare wall. [kg/m²]</param>
/// <param name="FrostThickness_m">Its depth. [m]</param>
/// <param name="NormalButane_kg">Of a mixed gas in it, the n-butane. [kg]</param>
/// <param name="Isobutane_kg">Of a mixed gas in it, the isobutane. [kg]</param>
public readonly record struct CylinderReading(
    double Propane_kg, double Liquid_K, double Pressure_Pa, double FrostMass_kg_m2, double FrostThickness_m, double NormalButane_kg = 0,
    double Isobutane_kg = 0)
{
    /// <summary>Each species in it. [kg]</summary>
    public GasMasses Gas => new(Math.Max(0, Propane_kg - NormalButane_kg - Isobutane_kg), NormalButane_kg, Isobutane_kg);
}

/// <summary>A reading for every cylinder that a rig may have, in place, so that a look at a run allocates nothing.</summary>
[InlineArray(Rig.MostCylinders)]
public struct CylinderReadings : IEquatable<CylinderReadings>
{
    private CylinderReading _first;

    /// <inheritdoc/>
    public readonly bool Equals(CylinderReadings other)
    {
        for (int i = 0; i < Rig.MostCylinders; i++)
        {
            if (this[i] != other[i]) return false;
        }

        return true;
    }

    /// <inheritdoc/>
    public override readonly bool Equals(object? obj) => obj is CylinderReadings other && Equals(other);

    /// <inheritdoc/>
    public override readonly int GetHashCode() => _first.GetHashCode();

    /// <summary>Whether two are equal.</summary>
    public static bool operator ==(CylinderReadings left, CylinderReadings right) => left.Equals(right);

    /// <summary>Whether two differ.</summary>
    public static bool operator !=(CylinderReadings left, CylinderReadings right) => !left.Equals(right);
}
