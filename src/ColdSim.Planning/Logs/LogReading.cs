using ColdSim.Model;
using ColdSim.Planning.Gauges;

namespace ColdSim.Planning.Logs;

/// <summary>One reading of the log, ready to be turned into a mass.</summary>
public sealed record LogReading
{
    /// <summary>Its line in the log, 1 for the header.</summary>
    public required int Line { get; init; }

    /// <summary>Place of the cylinder that was read, from 0.</summary>
    public int Cylinder { get; init; }

    /// <summary>When it was read.</summary>
    public required DateTimeOffset Time { get; init; }

    /// <summary>What was read and how.</summary>
    public required GaugeReading Reading { get; init; }

    /// <summary>Whether the cylinder was filled or changed since the reading before.</summary>
    public bool Filled { get; init; }

    /// <summary>What the person wrote beside it.</summary>
    public string Note { get; init; } = "";

    /// <summary>What it says is in the cylinder.</summary>
    /// <param name="rig">The rig whose cylinder was read.</param>
    /// <exception cref="ImpossibleReadingException">The reading fits no contents of this cylinder.</exception>
    public ContentsEstimate Contents(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Reading.Estimate(GaugedCylinder.Of(rig.Cylinders[Cylinder]));
    }
}
