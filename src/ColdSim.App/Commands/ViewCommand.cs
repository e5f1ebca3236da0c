using System.CommandLine;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim view</c>, and <c>coldsim</c> alone: the screen.</summary>
internal static class ViewCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string> units = CommonOptions.Units();
        ExampleCommand command = new(
            "view",
            "Run a scenario and open the screen on it.",
            "coldsim view trip.toml",
            "NO_COLOR=1 coldsim view trip.toml --units si")
        { file, units };
        command.SetAction((parsed, cancel) => ShowAsync(
            () => ScenarioFile.ReadWithOptions(parsed.GetRequiredValue(file), host), parsed.GetRequiredValue(file), parsed.UnitStyle(units), host, cancel));
        return command;
    }

    /// <summary>Makes the program without a command open on the demo.</summary>
    public static void OpenDemoFrom(RootCommand root, Host host)
        => root.SetAction((_, cancel) => ShowAsync(() => ScenarioFile.Demo(host), null, UnitStyle.Us, host, cancel));

    private static async Task<int> ShowAsync(Func<ReadResult> read, string? file, UnitStyle units, Host host, CancellationToken cancel)
    {
        if (host.Screen is not { } show)
            throw CommandFault.Input("coldsim: the screen needs a terminal; 'coldsim run FILE' prints the same, and 'coldsim --help' tells more");
        ReadResult scenario = read();
        RunAnswer answer = await CommandRunner.AnswerAsync(RunWork.Of(scenario.Scenario!), host, cancel).ConfigureAwait(false);
        return show(new Opening(answer.Report, scenario.Options, host.Clock, file), units, host.Color);
    }
}
