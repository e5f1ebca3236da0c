using ColdSim.Model.Engine;

namespace ColdSim.Planning.Nights;

/// <summary>A run's ledger does not close, so nothing may be said of it.</summary>
/// <param name="ledger">How it stands.</param>
public sealed class LedgerOpenException(LedgerBalance ledger) : Exception("The ledger of a run does not close.")
{
    /// <summary>How it stands.</summary>
    public LedgerBalance Ledger { get; } = ledger;
}
