using ColdSim.App.Text;
using ColdSim.Planning.Ensemble;

namespace ColdSim.App.Commands;

/// <summary>Runs the members and prints the chance, as text or as JSON; what is done when it is interrupted is printed too.</summary>
internal sealed class ChanceAnswer(Host host, UnitStyle units, bool json, bool failIfShort)
{
    public async Task<int> GiveAsync(ChanceQuestion question, ChanceWish wish, CancellationToken cancel)
    {
        ChanceReport report = await RunAsync(question, wish, cancel).ConfigureAwait(false);
        if (json)
            Json(report);
        else
            RunText.Write(host.Out, ChanceText.Sections(report, units, host.Parts.Cautions()), host.OutIsTerminal && host.Color);

        // An interrupt stops the members, not the answer.
        await host.Out.FlushAsync(CancellationToken.None).ConfigureAwait(false);
        if (report.IsPartial)
        {
            host.Complain($"interrupted after {report.Done} of {report.Asked}; the figures are of these");
            return ExitCode.Interrupted;
        }

        return failIfShort && !report.AsWanted ? ExitCode.ShortOrDry : ExitCode.Done;
    }

    private async Task<ChanceReport> RunAsync(ChanceQuestion question, ChanceWish wish, CancellationToken cancel)
    {
        RunCounter done = new();
        string of = wish.Record is null ? FormattableString.Invariant($" of {wish.Members}") : "";
        Task<ChanceReport> members = Task.Run(() => Run(question, wish, done, cancel), CancellationToken.None);
        await WaitingLine.UntilAsync(members, host, () => $", {done.Count}{of} done").ConfigureAwait(false);
        ChanceReport report = await members.ConfigureAwait(false);
        return report.Ledger.Closes ? report : throw OpenLedger.Fault(
            "the ledger of a member", "this chance", [OpenLedger.Line(report.Ledger)], "the scenario, its weather file and the seed");
    }

    private ChanceReport Run(ChanceQuestion question, ChanceWish wish, RunCounter done, CancellationToken cancel)
    {
        try
        {
            return host.Parts.Chance(question.Scenario, question.Options, wish, done, cancel);
        }
        catch (ArgumentException e)
        {
            throw CommandFault.Input($"coldsim: {e.Message.Split(" (Parameter", 2)[0]}");
        }
    }

    private void Json(ChanceReport report)
    {
        AssumedLines.Tell(host, report.Scenario.Assumptions);
        host.Parts.WriteChanceJson(report, host.Output);
    }
}
