using ColdSim.Model.Supply;

namespace ColdSim.Model.Arrangement;

/// <summary>The manifold between cylinders and regulator: the regulator's inlet pressures, and how a flow divides among the cylinders.</summary>
internal interface IManifold
{
    /// <summary>The cylinder that people would call the one in use.</summary>
    /// <param name="cylinders">State of the cylinders.</param>
    int InUse(CylinderStates cylinders);

    /// <summary>Inlet pressures of the regulator.</summary>
    /// <param name="cylinders">State of the cylinders.</param>
    FeedPressures Feed(CylinderStates cylinders);

    /// <summary>Writes what leaves each cylinder, negative where vapour comes in.</summary>
    /// <param name="point">Flow through the regulator.</param>
    /// <param name="cylinders">State of the cylinders; receives the outflows.</param>
    void Share(in SupplyPoint point, CylinderStates cylinders);

    /// <summary>The longest step that what happens in the manifold allows; infinite where it needs none. [s]</summary>
    /// <param name="cylinders">State of the cylinders, with their outflows.</param>
    double LongestStep_s(CylinderStates cylinders);
}
