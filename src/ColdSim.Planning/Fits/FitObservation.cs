using ColdSim.Model.Engine;
using ColdSim.Planning.Logs;

namespace ColdSim.Planning.Fits;

/// <summary>One measured value that a fit compares with a run of the simulator.</summary>
internal abstract record FitObservation
{
    /// <summary>When it was measured.</summary>
    public abstract DateTimeOffset Time { get; }

    /// <summary>What was measured, in the unit of its quantity.</summary>
    public abstract double Measured { get; }

    /// <summary>How far a parameter must move it to be told from the ripple of a run; null where the use of gas says so.</summary>
    public virtual double? Clear => null;

    /// <summary>The same quantity at an instant of a run, in the same unit.</summary>
    /// <param name="moment">The instant.</param>
    public abstract double In(in FitMoment moment);
}

/// <summary>Contents of a cylinder, as one line of the log gives them. [kg]</summary>
/// <param name="Row">The line.</param>
internal sealed record ContentsObservation(LogRow Row) : FitObservation
{
    /// <inheritdoc/>
    public override DateTimeOffset Time => Row.Reading.Time;

    /// <inheritdoc/>
    public override double Measured => Row.Contents.Mass_kg;

    /// <inheritdoc/>
    public override double In(in FitMoment moment) => moment.Cylinder(Row.Reading.Cylinder).Propane_kg;
}

/// <summary>An instant of a run through a log.</summary>
/// <param name="state">State of rig and surroundings, the cylinders in the order of the run.</param>
/// <param name="first">Place in the scenario of the run's first cylinder, from 0.</param>
/// <param name="count">How many cylinders there are.</param>
internal readonly ref struct FitMoment(ref readonly Snapshot state, int first = 0, int count = 1)
{
    private readonly int _first = first;
    private readonly int _count = count;

    /// <summary>State of rig and surroundings; its cylinders are in the order of the run, which begins with the one in use.</summary>
    public readonly ref readonly Snapshot State = ref state;

    /// <summary>One cylinder.</summary>
    /// <param name="cylinder">Its place in the scenario, from 0.</param>
    public ref readonly CylinderReading Cylinder(int cylinder) => ref State.Cylinder((cylinder - _first + _count) % _count);
}
