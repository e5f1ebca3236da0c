using ColdSim.Model.Supply;

namespace ColdSim.Model.Arrangement;

/// <summary>One cylinder feeds, the others are shut.</summary>
internal sealed class OneOpenManifold : IManifold
{
    /// <summary>Index of the open cylinder.</summary>
    public int Open { get; set; }

    /// <inheritdoc/>
    public int InUse(CylinderStates cylinders) => Open;

    /// <inheritdoc/>
    public FeedPressures Feed(CylinderStates cylinders)
        => new(cylinders.Contents[Open].Pressure_Pa, 0, cylinders.Temperature_K[Open]);

    /// <inheritdoc/>
    public void Share(in SupplyPoint point, CylinderStates cylinders)
    {
        for (int i = 0; i < cylinders.Count; i++) cylinders.Out_kg_s[i] = i == Open ? point.Flow_kg_s : 0;
    }

    /// <inheritdoc/>
    public double LongestStep_s(CylinderStates cylinders) => double.PositiveInfinity;
}
