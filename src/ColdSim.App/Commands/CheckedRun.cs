using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>A run that can be interrupted, tells that it is still at work, and is thrown away if its ledger does not close.</summary>
internal static class CheckedRun
{
    public static async Task<RunReport> OfAsync(Scenario scenario, Host host, CancellationToken cancel)
    {
        Task<RunReport> run = Task.Run(() => host.Parts.Run(scenario, cancel), cancel);
        await WaitingLine.UntilAsync(run, host).ConfigureAwait(false);
        RunReport report = await run.ConfigureAwait(false);
        cancel.ThrowIfCancellationRequested();
        if (report.Ledger.Closes)
            return report;
        throw OpenLedger.Fault("this run", report.Ledger, "the scenario and its weather file");
    }
}
