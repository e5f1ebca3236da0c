using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim explain</c>: why gas runs short, in the numbers of the run, and what would have held.</summary>
internal static class ExplainCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string?> at = new("--at")
        {
            HelpName = "TIME",
            Description = "Tell how things stand at this time instead, such as 2027-01-15T03:00.",
        };
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        ExampleCommand command = new(
            "explain",
            "Say why gas first runs short, which limit binds, and what would have held.",
            "coldsim explain trip.toml",
            "coldsim explain trip.toml --at 2027-01-15T03:00",
            "coldsim explain trip.toml --json > why.json")
        { file, at, units, json };
        command.SetAction(async (parsed, cancel) =>
        {
            Scenario scenario = ScenarioFile.Read(parsed.GetRequiredValue(file), host);
            Explanation explanation = await RunAsync(scenario, parsed.GetValue(at) is { } text ? AtOption.Read(text, scenario, "explain") : null, host, cancel).ConfigureAwait(false);
            if (parsed.GetValue(json))
                Json(explanation, host);
            else
                RunText.Write(host.Out, ExplainText.Sections(explanation, parsed.UnitStyle(units), host.Parts.Cautions()), host.OutIsTerminal && host.Color);
            await host.Out.FlushAsync(cancel).ConfigureAwait(false);
            return ExitCode.Done;
        });
        return command;
    }

    private static async Task<Explanation> RunAsync(Scenario scenario, DateTimeOffset? at, Host host, CancellationToken cancel)
    {
        int done = 0;
        Task<Explanation> work = Task.Run(() => host.Parts.Explain(scenario, at, () => Interlocked.Increment(ref done), cancel), cancel);
        await WaitingLine.UntilAsync(work, host, () => $", {Volatile.Read(ref done)} runs done").ConfigureAwait(false);
        try
        {
            Explanation explanation = await work.ConfigureAwait(false);
            cancel.ThrowIfCancellationRequested();
            return explanation;
        }
        catch (ArgumentOutOfRangeException e) when (at is not null && e.ParamName == nameof(at))
        {
            throw CommandFault.Input($"coldsim: --at: {ClockText.Start(at.Value)} is outside the run, which starts {ClockText.Start(scenario.Start)}");
        }
        catch (LedgerOpenException e)
        {
            throw OpenLedger.Fault("this explanation", e.Ledger, "the scenario and its weather file");
        }
    }

    private static void Json(Explanation explanation, Host host)
    {
        AssumedLines.Tell(host, explanation.Report.Scenario.Assumptions);
        host.Parts.WriteExplainJson(explanation, host.Output);
    }
}
