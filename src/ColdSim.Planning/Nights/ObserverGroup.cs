using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>Several observers of one run.</summary>
/// <param name="observers">The observers, in the order in which they are called.</param>
internal sealed class ObserverGroup(IReadOnlyList<IRunObserver> observers) : IRunObserver
{
    /// <inheritdoc/>
    public bool ReadsDelivery => observers.Any(o => o.ReadsDelivery);

    /// <inheritdoc/>
    public void Stepped(StepRecord record)
    {
        for (int i = 0; i < observers.Count; i++) observers[i].Stepped(record);
    }

    /// <inheritdoc/>
    public void Happened(in SimulationEvent happened, in Snapshot snapshot)
    {
        for (int i = 0; i < observers.Count; i++) observers[i].Happened(happened, snapshot);
    }
}
