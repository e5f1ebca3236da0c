using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Logs;
using ColdSim.Planning;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Commands;

/// <summary>The latest reading of a log, from which a scenario starts.</summary>
/// <param name="Before">The scenario as it is written.</param>
/// <param name="Log">Its log.</param>
/// <param name="Start">Where it starts.</param>
internal sealed record LatestReading(Scenario Before, UseLog Log, ForecastStart Start);

/// <summary>The log beside a scenario as commands read it: damaged lines end the command unless they are to be left out, and are named either way.</summary>
internal static class ScenarioLog
{
    public static Option<bool> NoLog() => new("--no-log") { Description = "Start as the scenario says, though its log has a newer reading." };

    public static Option<bool> SkipDamaged() => new("--skip-damaged") { Description = "Leave damaged lines out instead of stopping at them." };

    /// <summary>The log's latest reading, to which the run is moved, which is said; null where there is no log or nothing newer in it.</summary>
    public static LatestReading? Latest(string scenarioPath, Scenario scenario, bool skipDamaged, Host host)
    {
        if (!host.Files.Exists(LogFile.PathOf(scenarioPath)))
            return null;
        UseLog log = UseLog.Of(Read(scenarioPath, scenario, skipDamaged, host).Readings, scenario.Rig);
        if (ForecastStart.Of(scenario, log) is not { } start)
            return null;
        string road = start.Scenario.Start == start.Newest.Reading.Time ? "" : $", read on the road: from {ClockText.DayClock(start.Scenario.Start)}";
        host.Error.WriteLine(
            $"started from the log's latest reading, line {start.Newest.Reading.Line}, {ClockText.DayClock(start.Newest.Reading.Time.ToOffset(scenario.Start.Offset))}{road}; --no-log starts as the scenario says");
        return new(scenario, log, start);
    }

    /// <summary>The log as it is written.</summary>
    public static LogResult Read(string scenarioPath, Scenario scenario, bool skipDamaged, Host host)
    {
        if (scenario.Rig.Gas.IsMixed)
            throw CommandFault.Input($"coldsim: a log's readings are worked out for propane alone, and the gas here is {scenario.Rig.Gas.Name}; --no-log runs without");
        string path = LogFile.PathOf(scenarioPath);
        if (!host.Files.Exists(path))
            throw CommandFault.Input($"coldsim: there is no log '{path}'; begin one with 'coldsim log add {scenarioPath} --weight \"31.2 lb\"'");
        LogResult log = LogReader.Read(path, scenario.Rig);
        if (log.Damaged.Count == 0)
            return log;
        int lines = log.Damaged.Select(d => d.Line).Distinct().Count();
        string count = lines == 1 ? "1 damaged line" : $"{lines} damaged lines";
        if (!skipDamaged)
            throw CommandFault.Input([.. log.Damaged.Select(d => d.ToString()), $"coldsim: {count} in the log; mend them, or leave them out with --skip-damaged"]);
        foreach (FileProblem problem in log.Damaged)
            host.Error.WriteLine($"left out: {problem}");
        return log;
    }
}
