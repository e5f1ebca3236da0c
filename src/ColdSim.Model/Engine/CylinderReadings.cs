using System.Runtime.CompilerServices;

namespace ColdSim.Model.Engine;

/// <summary>How one cylinder stands at an instant. SI units.</summary>
/// <param name="Propane_kg">Propane in it, liquid and vapour. [kg]</param>
/// <param name="Liquid_K">Liquid and shell. [K]</param>
/// <param name="Pressure_Pa">Its own pressure. [Pa gauge]</param>
/// <param name="FrostMass_kg_m2">Frost on the bare wall. [kg/m²]</param>
/// <param name="FrostThickness_m">Its depth. [m]</param>
public readonly record struct CylinderReading(
    double Propane_kg, double Liquid_K, double Pressure_Pa, double FrostMass_kg_m2, double FrostThickness_m);

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
