using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>State of rig and surroundings at an instant of a run. SI units, pressures gauge.</summary>
/// <param name="Time_s">Seconds since the run's start. [s]</param>
/// <param name="Outside_K">Outside air. [K]</param>
/// <param name="Wind_m_s">Wind at mast height. [m/s]</param>
/// <param name="Inside_K">Inside air; NaN without a coach. [K]</param>
/// <param name="SetPoint_K">Set point; NaN without a thermostat. [K]</param>
/// <param name="CylinderPressure_Pa">Before the regulator, on the service side where there are two. [Pa gauge]</param>
/// <param name="DeliveryPressure_Pa">At the appliances. [Pa gauge]</param>
/// <param name="Propane_kg">Propane left in all cylinders. [kg]</param>
/// <param name="InUse">Place of the cylinder in use: the open one, the service side, or the first with liquid of those open together.</param>
/// <param name="Cylinders">Reading of each cylinder.</param>
internal record struct Snapshot(
    double Time_s,
    double Outside_K,
    double Wind_m_s,
    double Inside_K,
    double SetPoint_K,
    double CylinderPressure_Pa,
    double DeliveryPressure_Pa,
    double Propane_kg,
    int InUse,
    CylinderReadings Cylinders)
{
    private CylinderReadings _cylinders = Cylinders;

    /// <summary>Reading of each cylinder.</summary>
    public CylinderReadings Cylinders
    {
        readonly get => _cylinders;
        set => _cylinders = value;
    }

    /// <summary>Liquid and shell of the cylinder in use. [K]</summary>
    public readonly double Liquid_K => _cylinders[InUse].Liquid_K;

    /// <summary>One cylinder by reference: nothing is copied.</summary>
    /// <param name="i">Index of the cylinder.</param>
    [UnscopedRef]
    public readonly ref readonly CylinderReading Cylinder(int i) => ref _cylinders[i];

    /// <summary>Writes one cylinder in place.</summary>
    /// <param name="i">Index of the cylinder.</param>
    /// <param name="reading">Its reading.</param>
    internal void Set(int i, in CylinderReading reading) => _cylinders[i] = reading;
}

/// <summary>State of one cylinder at an instant. SI units.</summary>
/// <param name="Propane_kg">Gas in it, liquid and vapour. [kg]</param>
/// <param name="Liquid_K">Liquid and shell. [K]</param>
/// <param name="Hottest_K">The top of the dry wall under a blanket; the liquid without one. [K]</param>
/// <param name="Pressure_Pa">Its own pressure. [Pa gauge]</param>
/// <param name="FrostMass_kg_m2">Frost on the bare wall. [kg/m²]</param>
/// <param name="FrostThickness_m">Its depth. [m]</param>
/// <param name="NormalButane_kg">Of a mixed gas in it, the n-butane. [kg]</param>
/// <param name="Isobutane_kg">Of a mixed gas in it, the isobutane. [kg]</param>
internal readonly record struct CylinderReading(
    double Propane_kg, double Liquid_K, double Hottest_K, double Pressure_Pa, double FrostMass_kg_m2, double FrostThickness_m, double NormalButane_kg = 0,
    double Isobutane_kg = 0)
{
    /// <summary>Each species in it. [kg]</summary>
    public GasMasses Gas => new(Math.Max(0, Propane_kg - NormalButane_kg - Isobutane_kg), NormalButane_kg, Isobutane_kg);
}

/// <summary>A reading for every cylinder that a rig may have, in place, so that a snapshot allocates nothing.</summary>
[InlineArray(Rig.MostCylinders)]
internal struct CylinderReadings : IEquatable<CylinderReadings>
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
