using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Planning;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim freeze</c>: how long is left once the furnace stops.</summary>
internal static class FreezeCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string[]> at = new("--at")
        {
            HelpName = "TIME",
            Description = "When the furnace stops, such as 2027-01-15T03:00; several may be given. Four times a night unless given.",
        };
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        ExampleCommand command = new(
            "freeze",
            "Say how long is left once the furnace stops: until 50 °F inside, until freezing, until each pipe and tank begins to freeze.",
            "coldsim freeze trip.toml",
            "coldsim freeze trip.toml --at 2027-01-15T03:00",
            "coldsim freeze trip.toml --json > left.json")
        { file, at, units, json };
        command.SetAction(async (parsed, cancel) =>
        {
            Scenario scenario = ScenarioFile.Read(parsed.GetRequiredValue(file), host);
            FreezeOutlook outlook = await AskAsync(scenario, Instants(parsed.GetValue(at) ?? [], scenario), host, cancel).ConfigureAwait(false);
            if (parsed.GetValue(json))
                Json(outlook, host);
            else
                RunText.Write(host.Out, FreezeText.Sections(outlook, parsed.UnitStyle(units), host.Parts.Cautions()), host.OutIsTerminal && host.Color);
            await host.Out.FlushAsync(cancel).ConfigureAwait(false);
            return ExitCode.Done;
        });
        return command;
    }

    private static IReadOnlyList<DateTimeOffset> Instants(string[] texts, Scenario scenario)
    {
        if (texts.Length == 0)
            return scenario.HeatStops is { } stops ? [stops] : FreezeOutlook.UsualInstants(scenario);
        return [.. texts.Select(text => AtOption.Read(text, scenario, "freeze"))];
    }

    private static async Task<FreezeOutlook> AskAsync(Scenario scenario, IReadOnlyList<DateTimeOffset> instants, Host host, CancellationToken cancel)
    {
        Task<FreezeOutlook> work = Task.Run(() => host.Parts.Freeze(scenario, instants, cancel), cancel);
        await WaitingLine.UntilAsync(work, host).ConfigureAwait(false);
        try
        {
            return await work.ConfigureAwait(false);
        }
        catch (ArgumentOutOfRangeException e) when (e.ActualValue is DateTimeOffset at)
        {
            throw CommandFault.Input($"coldsim: --at: {ClockText.Start(at)} is outside the run, which starts {ClockText.Start(scenario.Start)}");
        }
        catch (LedgerOpenException e)
        {
            throw OpenLedger.Fault("this", e.Ledger, "the scenario and its weather file");
        }
    }

    private static void Json(FreezeOutlook outlook, Host host)
    {
        AssumedLines.Tell(host, outlook.Scenario.Assumptions);
        host.Parts.WriteFreezeJson(outlook, host.Output);
    }
}
