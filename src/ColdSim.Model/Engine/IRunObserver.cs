namespace ColdSim.Model.Engine;

/// <summary>Observer of a run, step by step and event by event.</summary>
internal interface IRunObserver
{
    /// <summary>Whether it reads delivery pressures, which are worked out for that at every step; without it a snapshot has NaN.</summary>
    bool ReadsDelivery => true;

    /// <summary>A step was accepted.</summary>
    /// <param name="record">The step; the next one overwrites it, so copy what is kept.</param>
    void Stepped(StepRecord record);

    /// <summary>An event happened.</summary>
    /// <param name="happened">Kind of event, its time and its value.</param>
    /// <param name="snapshot">State at that instant.</param>
    void Happened(in SimulationEvent happened, in Snapshot snapshot);
}
