using ColdSim.Model.Supply;

namespace ColdSim.Model.Arrangement;

/// <summary>Two cylinders on an automatic changeover: the first serves, the second is the reserve.</summary>
internal sealed class ChangeoverManifold : IManifold
{
    /// <summary>The service side's place.</summary>
    public const int Service = 0;

    /// <summary>The reserve side's place.</summary>
    public const int Reserve = 1;

    /// <inheritdoc/>
    public int InUse(CylinderStates cylinders) => Service;

    /// <inheritdoc/>
    public FeedPressures Feed(CylinderStates cylinders) => new(
        cylinders.Contents[Service].Pressure_Pa, cylinders.Contents[Reserve].Pressure_Pa, cylinders.Temperature_K[Service]);

    /// <inheritdoc/>
    public void Share(in SupplyPoint point, CylinderStates cylinders)
    {
        cylinders.Out_kg_s[Service] = point.Flow_kg_s - point.Reserve_kg_s;
        cylinders.Out_kg_s[Reserve] = point.Reserve_kg_s;
    }

    /// <inheritdoc/>
    public double LongestStep_s(CylinderStates cylinders) => double.PositiveInfinity;
}
