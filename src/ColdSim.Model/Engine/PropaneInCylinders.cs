using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;

namespace ColdSim.Model.Engine;

/// <summary>Propane alone: its mass says all.</summary>
internal sealed class PropaneInCylinders(CylinderBody[] bodies) : IGasInCylinders
{
    /// <inheritdoc/>
    public PlantState NewState(int nodes) => new(bodies.Length, nodes, mixed: false, CylinderBody.IsAnyUnderBlanket(bodies));

    /// <inheritdoc/>
    public void Begin(PlantState s, int cylinder, CylinderState? from)
    {
    }

    /// <inheritdoc/>
    public CylinderContents At(PlantState s, int cylinder, double t_K) => bodies[cylinder].Contents(s.Propane_kg[cylinder], t_K);

    /// <inheritdoc/>
    public double LiquidVolume_m3(PlantState s, int cylinder, double t_K)
        => Math.Max(0, new TwoPhaseContents(s.Propane_kg[cylinder], bodies[cylinder].Specification.Volume_m3, Math.Min(t_K, SaturationTable.Highest_K)).LiquidVolume_m3);

    /// <inheritdoc/>
    public void Contents(PlantState s, bool[] hasLiquid, CylinderStates into)
    {
        for (int i = 0; i < bodies.Length; i++)
            CylinderContents.In(hasLiquid[i], s.Propane_kg[i], bodies[i].Specification.Volume_m3, s.Cylinder_K[i], out into.Contents[i]);
    }

    /// <inheritdoc/>
    public void ConvertOutflows(double flow_kg_s, IManifold manifold, CylinderStates cylinders)
    {
    }

    /// <inheritdoc/>
    public void CompositionRates(CylinderStates cylinders, PlantState rate)
    {
    }

    /// <inheritdoc/>
    public double FuelBeyondPropane_J(PlantState s) => 0;

    /// <inheritdoc/>
    public CylinderState StateOf(PlantState s, int cylinder, FrostLayer frost) => new(s.Propane_kg[cylinder], s.Cylinder_K[cylinder], frost);
}
