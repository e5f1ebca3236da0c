using System.CommandLine;
using ColdSim.App.Screens.Frame;
using ColdSim.App.Screens.Tries;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim view</c>, and <c>coldsim</c> alone: the screen.</summary>
internal static class ViewCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string> units = CommonOptions.Units();
        Option<bool> ascii = new("--ascii") { Description = "Draw with plain characters only; else where TERM or the locale says so." };
        StartOptions log = new();
        ExampleCommand command = new(
            "view",
            "Run a scenario and open the screen on it.",
            "coldsim view trip.toml",
            "NO_COLOR=1 coldsim view trip.toml --units si")
        { file, units, ascii, log.Weather, log.NoLog, log.SkipDamaged };
        command.SetAction((parsed, cancel) =>
        {
            string path = parsed.GetRequiredValue(file);
            ScreenFiles files = FilesOf(host) with { WithLog = !parsed.GetValue(log.NoLog), SkipDamaged = parsed.GetValue(log.SkipDamaged) };
            if (parsed.GetValue(log.Weather) is { } weather)
                files = files with { Weather = (path, weather) };
            return ShowAsync(() => Read(parsed), path, files, parsed.UnitStyle(units), host.Plain || parsed.GetValue(ascii), host, cancel);
        });
        return command;

        StartedScenario Read(ParseResult parsed) => Shown(StartedScenario.Read(parsed.GetRequiredValue(file), parsed, log, parsed.UnitStyle(units), host), parsed.UnitStyle(units));
    }

    /// <summary>Makes the program without a command open on the kept rig, or on the demo where none is kept.</summary>
    public static void OpenFrom(RootCommand root, Host host)
        => root.SetAction((_, cancel) => KeptRig.Find(host) is { } kept
            ? ShowAsync(() => Shown(StartedScenario.Read(kept, withLog: true, skipDamaged: false, UnitStyle.Us, host), UnitStyle.Us), kept, FilesOf(host), UnitStyle.Us, host.Plain, host, cancel)
            : ShowAsync(() => Demo(host), null, FilesOf(host), UnitStyle.Us, host.Plain, host, cancel));

    // What is said before the screen opens is hidden by it, so it is among what was assumed too.
    internal static StartedScenario Shown(StartedScenario started, UnitStyle units) => started.Scenario.StartedFrom is not { } from ? started
        : started with { Scenario = started.Scenario with { Assumptions = [LogStartLine.Of(from, units), .. started.Scenario.Assumptions] } };

    private static StartedScenario Demo(Host host)
    {
        ReadResult demo = ScenarioFile.Demo(host);
        return new(demo.Scenario! with { Title = $"DEMO, INVENTED: {demo.Scenario.Title}" }, demo.Options, null);
    }

    private static async Task<int> ShowAsync(Func<StartedScenario> read, string? file, ScreenFiles files, UnitStyle units, bool plain, Host host, CancellationToken cancel)
    {
        if (host.Screen is not { } show)
            throw CommandFault.Input("coldsim: the screen needs a terminal; 'coldsim run FILE' prints the same, and 'coldsim --help' tells more");
        FileStamps before = FileStamps.Of(file is null ? [] : [file, LogFile.PathOf(file)]);
        StartedScenario started = read();
        RunAnswer answer = await CommandRunner.AnswerAsync(RunWork.Of(started.Scenario), host, cancel).ConfigureAwait(false);
        Opening opening = OpeningOf(started, answer.Report, file, files.WeatherOf(file), host) with { Files = files, Plain = plain };
        return show(file is null ? opening : opening with { Stamps = before.With(FileStamps.Of(host.Files.Reads.Paths)) }, units, host.Color);
    }

    /// <summary>What the screen opens on.</summary>
    internal static Opening OpeningOf(StartedScenario started, RunReport report, string? file, string? weather, Host host)
    {
        TryFiles tries = TryOpening.Files(file, weather, host);
        return new(report, started.Options, host.Clock, file)
        {
            Reads = host.Files.Reads,
            AsWritten = started.Latest?.Before,
            Tries = tries,
            Bench = TryOpening.Bench(file, tries, started, report, host),
        };
    }

    private static ScreenFiles FilesOf(Host host) => new(host.Clock, () => new DiskFiles());
}
