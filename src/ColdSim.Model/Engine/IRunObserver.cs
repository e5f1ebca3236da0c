namespace ColdSim.Model.Engine;

/// <summary>Somebody who watches a run, step by step and event by event.</summary>
public interface IRunObserver
{
    /// <summary>A step was accepted.</summary>
    /// <param name="record">What it was; filled anew by the next one, so copy what is kept.</param>
    void Stepped(StepRecord record);

    /// <summary>Something happened.</summary>
    /// <param name="happened">What and when.</param>
    /// <param name="snapshot">How things stood.</param>
    void Happened(in SimulationEvent happened, in Snapshot snapshot);
}
