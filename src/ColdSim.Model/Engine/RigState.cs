using ColdSim.Model.Cylinder;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>State of a cylinder between two runs. SI units.</summary>
/// <param name="Propane_kg">Gas in it. [kg]</param>
/// <param name="Liquid_K">Liquid and shell. [K]</param>
/// <param name="Frost">Frost on its wall.</param>
public sealed record CylinderState(double Propane_kg, double Liquid_K, FrostLayer Frost)
{
    /// <summary>What its gas is made of, parts by mass; null for the gas as it is filled.</summary>
    public GasMasses? Composition { get; init; }

    /// <summary>Energy by which its dry wall under a blanket is warmer than the liquid. [J]</summary>
    public double Wall_J { get; init; }
}

/// <summary>State of cylinders and coach between two runs, so that one continues the other. SI units.</summary>
/// <param name="Cylinders">State of each cylinder.</param>
/// <param name="InUse">Place of the one in use.</param>
/// <param name="Air_K">Inside air; NaN without a coach. [K]</param>
/// <param name="Furnishings_K">Furnishings; NaN without a coach. [K]</param>
public sealed record RigState(IReadOnlyList<CylinderState> Cylinders, int InUse, double Air_K, double Furnishings_K)
{
    /// <summary>The 12 V side; null without a battery, or where it is as its specification says.</summary>
    public PowerState? Power { get; init; }

    /// <summary>Energy in each node, from water at freezing; empty for how the nodes themselves start. [J]</summary>
    public IReadOnlyList<double> Nodes_J { get; init; } = [];

    /// <summary>Water vapour in the coach's air; null for how the coach itself starts. [kg]</summary>
    public double? Vapour_kg { get; init; }
}

/// <summary>State of the 12 V side between two runs. SI units.</summary>
/// <param name="Stored_J">Charge as energy at nominal voltage. [J]</param>
/// <param name="Live">Whether there is voltage.</param>
/// <param name="IsFrozen">Whether acid in the battery is frozen.</param>
/// <param name="IsCutOut">Whether the cold keeps it from giving anything.</param>
public sealed record PowerState(double Stored_J, bool Live, bool IsFrozen = false, bool IsCutOut = false);
