using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Limits;

namespace ColdSim.App.Commands;

/// <summary>Finds a rig's limits and prints them, as text, as one page or as JSON.</summary>
internal sealed class LimitsAnswer(Host host, UnitStyle units, bool json, bool page)
{
    /// <summary>Where the cells go as well, or null.</summary>
    public string? CsvPath { get; init; }

    public async Task<int> GiveAsync(Scenario scenario, IReadOnlyList<double> fills, CancellationToken cancel)
    {
        LimitChart chart = await FindAsync(scenario, fills, cancel).ConfigureAwait(false);
        if (json)
            Json(chart);
        else if (page)
            Page(chart);
        else
            RunText.Write(host.Out, LimitText.Sections(chart, units, host.Parts.Cautions()), host.OutIsTerminal && host.Color);
        await host.Out.FlushAsync(cancel).ConfigureAwait(false);
        if (CsvPath is not null)
            CsvFile.Write(host, CsvPath, "limits", writer => host.Parts.WriteLimitsCsv(chart, writer), cancel);
        return ExitCode.Done;
    }

    // What is printed was run at whole degrees of the person's own unit.
    private async Task<LimitChart> FindAsync(Scenario scenario, IReadOnlyList<double> fills, CancellationToken cancel)
    {
        Counter done = new();
        LimitAxis axis = units.IsUs ? LimitAxis.Fahrenheit : LimitAxis.Celsius;
        int cells = fills.Count * Planning.Limits.SetUp.Of(scenario.Rig).Count;
        Task<LimitChart> work = Task.Run(() => host.Parts.Limits(scenario, axis, fills, done, cancel), cancel);
        await WaitingLine.UntilAsync(work, host, () => $", {done.Count} of {cells} done").ConfigureAwait(false);
        LimitChart chart = await work.ConfigureAwait(false);
        cancel.ThrowIfCancellationRequested();
        return chart.Cells.FirstOrDefault(c => c.Ledger is { Closes: false }) is not { } open ? chart : throw OpenLedger.Fault(
            "the ledger", "these limits", [$"{LimitWords.Percent(open.Fill_frac)}: {OpenLedger.Line(open.Ledger!.Value)}"], "the scenario");
    }

    private void Page(LimitChart chart)
    {
        foreach (string line in LimitPage.Lines(chart, units, host.Clock.GetLocalNow()))
            host.Out.WriteLine(line);
    }

    private void Json(LimitChart chart)
    {
        AssumedLines.Tell(host, chart.Scenario.Assumptions);
        host.Parts.WriteLimitsJson(chart, host.Output);
    }

    private sealed class Counter : IProgress<int>
    {
        private int _count;

        public int Count => Volatile.Read(ref _count);

        // The cells report from several threads, and a later count may come first.
        public void Report(int value) => Interlocked.Increment(ref _count);
    }
}
