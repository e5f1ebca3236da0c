using ColdSim.Model.Engine;

namespace ColdSim.App.Screens.Pages;

/// <summary>Why a page shows nothing.</summary>
internal static class PageFaults
{
    public const string Ledger = "the ledger of a run does not close, so nothing of it is shown; please report it with the scenario and its weather file.";

    /// <summary>The figures of runs whose ledgers close.</summary>
    /// <exception cref="InvalidOperationException">A ledger is open, and nothing of the figures may be shown.</exception>
    public static T IfClosed<T>(T figures, params IEnumerable<LedgerBalance> ledgers)
        => ledgers.All(l => l.Closes) ? figures : throw new InvalidOperationException(Ledger);
}
