using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Logs;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
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
            "coldsim log add trip.toml --weight \"37.4 lb\" --filled")
        { file };
        foreach (Option option in o.All)
            command.Options.Add(option);
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = ScenarioFile.Read(path, host);
            OneCylinder(scenario, path);
            IReadOnlyList<LogEntry> entries = new LogInput(parsed, o, scenario, host.Clock).Entries();
            LogFile.Append(LogFile.PathOf(path), entries);
            foreach (LogEntry entry in entries)
            {
                LogReading reading = new EntryReader(entry, scenario.Rig.Cylinders[0]).Read(0)!;
                ContentsEstimate held = reading.Reading.Estimate(GaugedCylinder.Of(scenario.Rig.Cylinders[0]));
                UnitStyle units = UnitStyle.Us;
                host.Out.WriteLine(
                    $"{ClockText.DayClock(entry.Time)}, {entry.Method} {entry.Reading}: {units.Mass(held.Mass.Kilograms)} of propane, give or take {units.Mass(held.StandardUncertainty.Kilograms)}");
            }

            host.Out.WriteLine($"written to {LogFile.PathOf(path)}");
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
            "List and check the log: what each reading means, and what was used between readings.",
            "coldsim log show trip.toml",
            "coldsim log show trip.toml --json > readings.json")
        { file, skip, units, json };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = ScenarioFile.Read(path, host);
            LogResult log = Read(path, scenario, parsed.GetValue(skip), host);
            UseLog use = UseLog.Of(log.Readings, GaugedCylinder.Of(scenario.Rig.Cylinders[0]));
            if (parsed.GetValue(json))
            {
                host.Out.Flush();
                LogJson.Write(use, log.Damaged, host.Output);
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

    private static void OneCylinder(Scenario scenario, string path)
    {
        if (scenario.Rig.Cylinders.Count > 1)
            throw CommandFault.Input($"coldsim: '{path}' has {scenario.Rig.Cylinders.Count} cylinders; a log is kept of a scenario with one");
    }

    /// <summary>Goes on without the lines that are damaged.</summary>
    public static Option<bool> SkipDamaged() => new("--skip-damaged") { Description = "Leave damaged lines out instead of stopping at them." };

    /// <summary>The scenario's log; damaged lines end the command unless they are to be left out, and are named either way.</summary>
    public static LogResult Read(string scenarioPath, Scenario scenario, bool skipDamaged, Host host)
    {
        OneCylinder(scenario, scenarioPath);
        string path = LogFile.PathOf(scenarioPath);
        if (!File.Exists(path))
            throw CommandFault.Input($"coldsim: there is no log '{path}'; begin one with 'coldsim log add {scenarioPath} --weight \"31.2 lb\"'");
        LogResult log = LogReader.Read(path, scenario.Rig.Cylinders[0]);
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
