namespace ColdSim.App.Screens.Pages;

/// <summary>Why a page shows nothing.</summary>
internal static class PageFaults
{
    public const string Ledger = "the ledger of a run does not close, so nothing of it is shown; please report it with the scenario and its weather file.";
}
