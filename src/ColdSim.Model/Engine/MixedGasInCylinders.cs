using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Model.Engine;

/// <summary>A gas of several species, each followed in every cylinder.</summary>
/// <remarks>
/// Regulator and appliances are holes made for propane. At given pressures a hole passes mass in proportion to the root of the molar
/// mass, the same factor for every hole, so the supply is solved for propane and its flow multiplied by that root. docs/model.md, "Mixed gas".
/// </remarks>
internal sealed class MixedGasInCylinders(CylinderBody[] bodies, GasSpecification gas) : IGasInCylinders
{
    // An empty cylinder holds this trace of the gas as filled, so that what is in it has a composition.
    private const double Trace_kg = 1e-9;

    /// <inheritdoc/>
    public PlantState NewState(int nodes) => new(bodies.Length, nodes, mixed: true, CylinderBody.IsAnyUnderBlanket(bodies));

    /// <inheritdoc/>
    public void Begin(PlantState s, int cylinder, CylinderState? from)
    {
        s.Propane_kg[cylinder] = Math.Max(s.Propane_kg[cylinder], Trace_kg);
        GasMasses composition = from?.Composition ?? bodies[cylinder].Specification.InitialComposition ?? gas.Composition;
        s.SetButanes(cylinder, composition * s.Propane_kg[cylinder]);
    }

    /// <inheritdoc/>
    public double LiquidVolume_m3(PlantState s, int cylinder, double t_K) => At(s, cylinder, t_K).LiquidVolume_m3;

    /// <inheritdoc/>
    public CylinderContents At(PlantState s, int cylinder, double t_K) => bodies[cylinder].Contents(s.Gas(cylinder), t_K);

    /// <inheritdoc/>
    public void Contents(PlantState s, bool[] hasLiquid, CylinderStates into)
    {
        for (int i = 0; i < bodies.Length; i++)
        {
            MixedContents mixed = MixedContents.In(hasLiquid[i], s.Gas(i), bodies[i].Specification.Volume_m3, s.Cylinder_K[i]);
            into.Contents[i] = CylinderContents.Of(mixed);
            into.Vapour[i] = mixed.Vapour;
        }
    }

    /// <inheritdoc/>
    public void ConvertOutflows(double flow_kg_s, IManifold manifold, CylinderStates cylinders)
    {
        double mass_kg_s = 0, heat_W = 0;
        for (int i = 0; i < bodies.Length; i++)
        {
            if (cylinders.Out_kg_s[i] == 0) continue;
            cylinders.Out_kg_s[i] *= GasBlend.Flow_factor(cylinders.Vapour[i]);
            mass_kg_s += cylinders.Out_kg_s[i];
            heat_W += cylinders.Out_kg_s[i] * GasBlend.Heat_J(cylinders.Vapour[i]);
        }

        bool flows = flow_kg_s > 0 && mass_kg_s > 0;
        int inUse = manifold.InUse(cylinders);
        cylinders.Mass_factor = flows ? mass_kg_s / flow_kg_s : GasBlend.Flow_factor(cylinders.Vapour[inUse]);
        cylinders.Heating_factor = gas.Heat_factor * (flows ? heat_W / mass_kg_s : GasBlend.Heat_J(cylinders.Vapour[inUse])) / gas.PlateHeatingValue_J_kg;
    }

    /// <inheritdoc/>
    public void CompositionRates(CylinderStates cylinders, PlantState rate)
    {
        for (int i = 0; i < bodies.Length; i++) rate.SetButanes(i, cylinders.Vapour[i] * -cylinders.Out_kg_s[i]);
    }

    /// <inheritdoc/>
    public double FuelBeyondPropane_J(PlantState s)
    {
        double sum_J = 0;
        for (int i = 0; i < bodies.Length; i++)
            sum_J += gas.Heat_factor * GasBlend.Heat_J(s.Gas(i)) - gas.PlateHeatingValue_J_kg * s.Propane_kg[i];
        return sum_J;
    }

    /// <inheritdoc/>
    public CylinderState StateOf(PlantState s, int cylinder, FrostLayer frost)
        => new(s.Propane_kg[cylinder], s.Cylinder_K[cylinder], frost) { Composition = s.Gas(cylinder).Parts() };
}
