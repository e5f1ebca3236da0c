using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>A run that can be interrupted, shows how far it is, and is thrown away if its ledger does not close.</summary>
internal static class CheckedRun
{
    public static async Task<RunReport> OfAsync(Scenario scenario, Host host, CancellationToken cancel)
    {
        using ProgressLine progress = new(host);
        RunReport report = await Task.Run(() => host.Parts.Run(scenario, progress, cancel), cancel).ConfigureAwait(false);
        cancel.ThrowIfCancellationRequested();
        if (report.Ledger.Closes)
            return report;
        throw new CommandFault(
            ExitCode.Internal,
            [
                "coldsim: internal error: the ledger does not close, so nothing of this run is shown.",
                RunText.Ledger(report.Ledger) + " Allowed is 1e-6.",
                "Please report it with the scenario and its weather file.",
            ]);
    }
}
