using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Compare;

namespace ColdSim.App.Commands;

/// <summary>Runs all options and prints what they come to, as text or as JSON.</summary>
internal sealed class CompareAnswer(Host host, UnitStyle units, bool json, bool failIfShort)
{
    /// <summary>Where the table goes as well, or null.</summary>
    public string? CsvPath { get; init; }

    /// <summary>Whether the options are cylinders of several sizes, filled alike.</summary>
    public bool Swept { get; init; }

    public async Task<int> GiveAsync(Scenario scenario, IReadOnlyList<ComparedOption> options, CancellationToken cancel)
    {
        Comparison comparison = await RunAsync(scenario, options, cancel).ConfigureAwait(false);
        if (json)
            Json(comparison);
        else
            RunText.Write(host.Out, CompareText.Sections(comparison, units, host.Parts.Cautions(), Swept), host.OutIsTerminal && host.Color);
        await host.Out.FlushAsync(cancel).ConfigureAwait(false);
        if (CsvPath is not null)
            CsvFile.Write(host, CsvPath, "table", writer => host.Parts.WriteCompareCsv(comparison, writer), cancel);
        return failIfShort && !comparison.AnyHolds ? ExitCode.ShortOrDry : ExitCode.Done;
    }

    private async Task<Comparison> RunAsync(Scenario scenario, IReadOnlyList<ComparedOption> options, CancellationToken cancel)
    {
        RunCounter done = new();
        Task<Comparison> runs = Task.Run(() => host.Parts.Compare(scenario, options, done, cancel), cancel);
        await WaitingLine.UntilAsync(runs, host, () => $", {done.Count} of {options.Count + 1} done").ConfigureAwait(false);
        Comparison comparison = await runs.ConfigureAwait(false);
        cancel.ThrowIfCancellationRequested();
        ComparedRow[] open = [.. comparison.Rows.Where(r => !r.Ledger.Closes)];
        if (open.Length == 0)
            return comparison;
        throw OpenLedger.Fault(
            "the ledger", "this comparison", open.Select(r => $"{r.Option.Name}: {OpenLedger.Line(r.Ledger)}"), "the scenario and its weather file");
    }

    private void Json(Comparison comparison)
    {
        AssumedLines.Tell(host, comparison.Base.Assumptions);
        host.Parts.WriteCompareJson(comparison, host.Output);
    }
}
