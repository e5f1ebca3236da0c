using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Commands;

/// <summary>Runs a trip and prints what it says, as text or as JSON.</summary>
internal sealed class TripAnswer(Host host, UnitStyle units, bool json, bool failIfShort)
{
    /// <summary>Where the nights go as well, or null.</summary>
    public string? CsvPath { get; init; }

    public async Task<int> GiveAsync(Scenario scenario, CancellationToken cancel)
    {
        TripReport report = await RunAsync(scenario, cancel).ConfigureAwait(false);
        if (json)
            Json(report);
        else
            RunText.Write(host.Out, TripText.Sections(report, units, host.Parts.Cautions()), host.OutIsTerminal && host.Color);
        await host.Out.FlushAsync(cancel).ConfigureAwait(false);
        if (CsvPath is not null)
            CsvFile.Write(host, CsvPath, "nights", writer => host.Parts.WriteTripCsv(report, writer), cancel);
        return failIfShort && report.Run.Summary.Verdict != Verdict.Holds ? ExitCode.ShortOrDry : ExitCode.Done;
    }

    private async Task<TripReport> RunAsync(Scenario scenario, CancellationToken cancel)
    {
        RunCounter done = new();
        Task<TripReport> run = Task.Run(() => host.Parts.RunTrip(scenario, done, cancel), cancel);
        await WaitingLine.UntilAsync(run, host, () => $", {done.Count} other days tried").ConfigureAwait(false);
        TripReport report = await run.ConfigureAwait(false);
        cancel.ThrowIfCancellationRequested();
        if (report.Run.Ledger.Closes)
            return report;
        throw OpenLedger.Fault("this trip", report.Run.Ledger, "the scenario and its weather files");
    }

    private void Json(TripReport report)
    {
        AssumedLines.Tell(host, report.Run.Scenario.Assumptions);
        host.Parts.WriteTripJson(report, host.Output);
    }
}
