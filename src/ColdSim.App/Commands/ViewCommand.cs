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
        Option<bool> noLog = ScenarioLog.NoLog();
        Option<bool> skip = ScenarioLog.SkipDamaged();
        ExampleCommand command = new(
            "view",
            "Run a scenario and open the screen on it.",
            "coldsim view trip.toml",
            "NO_COLOR=1 coldsim view trip.toml --units si")
        { file, units, noLog, skip };
        command.SetAction((parsed, cancel) => ShowAsync(() => Read(parsed), parsed.GetRequiredValue(file), parsed.UnitStyle(units), host, cancel));
        return command;

        // What is said before the screen opens is hidden by it, so it is among what was assumed too.
        ReadResult Read(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            ReadResult read = ScenarioFile.ReadWithOptions(path, host);
            return parsed.GetValue(noLog) || ScenarioLog.NotUsed(path, read.Scenario!, parsed.GetValue(skip), parsed.UnitStyle(units), host) is not { } line
                ? read : read with { Scenario = read.Scenario! with { Assumptions = [line, .. read.Scenario.Assumptions] } };
        }
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
        return show(new Opening(answer.Report, scenario.Options, host.Clock, file) { Reads = host.Files.Reads }, units, host.Color);
    }
}
