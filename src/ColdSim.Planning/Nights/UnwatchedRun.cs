using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>Observes nothing: for a run of which only the nights matter.</summary>
internal sealed class UnwatchedRun : IRunObserver
{
    private UnwatchedRun()
    {
    }

    /// <summary>The one there is; it has no state.</summary>
    public static UnwatchedRun Only { get; } = new();

    /// <inheritdoc/>
    public bool ReadsDelivery => false;

    public void Stepped(StepRecord record)
    {
    }

    public void Happened(in SimulationEvent happened, in Snapshot moment)
    {
    }
}
