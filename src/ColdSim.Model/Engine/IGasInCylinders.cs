using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;

namespace ColdSim.Model.Engine;

/// <summary>The gas in the cylinders, pure or mixed, as the equations need it; chosen once for a plant.</summary>
internal interface IGasInCylinders
{
    /// <summary>A state with room for its species.</summary>
    /// <param name="nodes">How many nodes beside coach and cylinders.</param>
    PlantState NewState(int nodes);

    /// <summary>Puts the gas as filled, or of a composition of its own, into a cylinder of a state that holds its mass already.</summary>
    void Begin(PlantState s, int cylinder, CylinderState? from);

    /// <summary>What is in one cylinder, with or without liquid as it comes out, if it had a temperature.</summary>
    CylinderContents At(PlantState s, int cylinder, double t_K);

    /// <summary>Volume of the liquid in a cylinder at a temperature. [m³]</summary>
    /// <param name="s">The state, of which the masses count.</param>
    /// <param name="cylinder">Index of the cylinder.</param>
    /// <param name="t_K">Temperature of everything in it. [K]</param>
    double LiquidVolume_m3(PlantState s, int cylinder, double t_K);

    /// <summary>Works out what is in every cylinder, in phases that are known.</summary>
    void Contents(PlantState s, bool[] hasLiquid, CylinderStates into);

    /// <summary>Converts outflows of propane into those of the gas that leaves.</summary>
    /// <param name="flow_kg_s">Flow as solved for propane. [kg/s]</param>
    /// <param name="manifold">Says which cylinder is in use.</param>
    /// <param name="cylinders">State of the cylinders, with their outflows.</param>
    void ConvertOutflows(double flow_kg_s, IManifold manifold, CylinderStates cylinders);

    /// <summary>Writes the rates of change of each cylinder's composition.</summary>
    void CompositionRates(CylinderStates cylinders, PlantState rate);

    /// <summary>Heat of combustion of all that is stored beyond that of as much propane. [J]</summary>
    double FuelBeyondPropane_J(PlantState s);

    /// <summary>A cylinder's state for the next run.</summary>
    CylinderState StateOf(PlantState s, int cylinder, FrostLayer frost);
}
