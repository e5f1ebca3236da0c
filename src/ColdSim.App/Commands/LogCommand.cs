using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim log</c>: readings kept beside a scenario.</summary>
internal static class LogCommand
{
    public static Command Of(Host host) => new ExampleCommand(
        "log",
        "Keep readings of the cylinder in a CSV beside the scenario, and show what they come to.",
        "coldsim log add trip.toml --weight \"31.2 lb\"",
        "coldsim log show trip.toml")
    {
        Add(host), Show(host),
    };

    private static ExampleCommand Add(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file; the log is beside it, trip.log.csv for trip.toml.");
        LogOptions o = new();
        ExampleCommand command = new(
            "add",
            "Append readings to the scenario's log, a line each.",
            "coldsim log add trip.toml --weight \"31.2 lb\" --note \"before supper\"",
            "coldsim log add trip.toml --at 2027-01-13T07:00-07:00 --line \"5.1 in\" \\",
            "    --temperature \"10 °F\"",
            "coldsim log add trip.toml --weight \"37.4 lb\" --filled",
            "coldsim log add trip.toml --cylinder left --weight \"31.2 lb\"")
        { file };
        foreach (Option option in o.All)
            command.Options.Add(option);
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = ScenarioFile.Read(path, host);
            IReadOnlyList<LogEntry> entries = new LogInput(parsed, o, scenario, host.Clock).Entries();
            string log = LogFile.PathOf(path);
            LogFile.Append(log, entries);
            foreach (LogEntry entry in entries)
                host.Out.WriteLine(LogText.Entry(entry, scenario.Rig, UnitStyle.Us));
            host.Out.WriteLine($"written to {log}");
            return ExitCode.Done;
        });
        return command;
    }

    private static ExampleCommand Show(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<bool> skip = SkipDamaged();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        ExampleCommand command = new(
            "show",
            "List and check the log: what each reading means, what was used, and what the weather would have predicted.",
            "coldsim log show trip.toml",
            "coldsim log show trip.toml --json > readings.json")
        { file, skip, units, json };
        command.SetAction(async (parsed, cancel) =>
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = ScenarioFile.Read(path, host);
            LogResult log = Read(path, scenario, parsed.GetValue(skip), host);
            LogPrediction use = await PredictAsync(scenario, UseLog.Of(log.Readings, scenario.Rig), host, cancel).ConfigureAwait(false);
            if (parsed.GetValue(json))
            {
                await host.Out.FlushAsync(cancel).ConfigureAwait(false);
                JsonReport.Write(LogReport.Of(use, scenario, [.. log.Damaged.Select(d => d.ToString())]), host.Output);
            }
            else
            {
                RunText.Write(
                    host.Out, LogText.Sections(LogFile.PathOf(path), use, scenario, parsed.UnitStyle(units), host.Parts.Cautions()), host.OutIsTerminal && host.Color);
            }

            return ExitCode.Done;
        });
        return command;
    }

    /// <summary>The log beside the simulator.</summary>
    public static async Task<LogPrediction> PredictAsync(Scenario scenario, UseLog log, Host host, CancellationToken cancel)
    {
        Task<LogPrediction> work = Task.Run(() => LogPrediction.Of(scenario, log, null, cancel), cancel);
        await WaitingLine.UntilAsync(work, host).ConfigureAwait(false);
        return await work.ConfigureAwait(false);
    }

    /// <summary>Goes on without the lines that are damaged.</summary>
    public static Option<bool> SkipDamaged() => new("--skip-damaged") { Description = "Leave damaged lines out instead of stopping at them." };

    /// <summary>The scenario's log; damaged lines end the command unless they are to be left out, and are named either way.</summary>
    public static LogResult Read(string scenarioPath, Scenario scenario, bool skipDamaged, Host host)
    {
        if (scenario.Rig.Gas.IsMixed)
            throw CommandFault.Input($"coldsim: a log's readings are worked out for propane alone, and the gas here is {scenario.Rig.Gas.Name}; --no-log runs without");
        string path = LogFile.PathOf(scenarioPath);
        if (!File.Exists(path))
            throw CommandFault.Input($"coldsim: there is no log '{path}'; begin one with 'coldsim log add {scenarioPath} --weight \"31.2 lb\"'");
        LogResult log = LogReader.Read(path, scenario.Rig);
        if (log.Damaged.Count == 0)
            return log;
        int lines = log.Damaged.Select(d => d.Line).Distinct().Count();
        string count = lines == 1 ? "1 damaged line" : $"{lines} damaged lines";
        if (!skipDamaged)
            throw CommandFault.Input([.. log.Damaged.Select(d => d.ToString()), $"coldsim: {count} in the log; mend them, or leave them out with --skip-damaged"]);
        foreach (Files.FileProblem problem in log.Damaged)
            host.Error.WriteLine($"left out: {problem}");
        return log;
    }
}
