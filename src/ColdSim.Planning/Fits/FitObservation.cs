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
    public override double In(in FitMoment moment) => moment.Contents_kg(Row.Reading.Cylinder);
}

/// <summary>An instant of a run through a log.</summary>
/// <param name="state">State of rig and surroundings.</param>
internal readonly ref struct FitMoment(ref readonly Snapshot state)
{
    /// <summary>State of rig and surroundings.</summary>
    public readonly ref readonly Snapshot State = ref state;

    /// <summary>What a cylinder would hold had it not been filled since the first reading of its stretch. [kg]</summary>
    /// <param name="cylinder">Its place in the scenario, from 0.</param>
    public double Contents_kg(int cylinder) => State.Cylinder(cylinder).Propane_kg;
}
