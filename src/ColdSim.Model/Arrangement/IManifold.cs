using ColdSim.Model.Supply;

namespace ColdSim.Model.Arrangement;

/// <summary>Between the cylinders and the regulator: which pressure stands there and what each cylinder gives to a flow.</summary>
internal interface IManifold
{
    /// <summary>The cylinder that people would call the one in use.</summary>
    /// <param name="cylinders">How the cylinders stand.</param>
    int InUse(CylinderStates cylinders);

    /// <summary>What stands before the regulator.</summary>
    /// <param name="cylinders">How the cylinders stand.</param>
    FeedPressures Feed(CylinderStates cylinders);

    /// <summary>Writes what leaves each cylinder, negative where vapour comes in.</summary>
    /// <param name="point">What flows through the regulator.</param>
    /// <param name="cylinders">How the cylinders stand; takes the outflows.</param>
    void Share(in SupplyPoint point, CylinderStates cylinders);

    /// <summary>Whether a cylinder may give gas as things are connected.</summary>
    /// <param name="cylinder">Its place.</param>
    bool IsOpen(int cylinder);
}
