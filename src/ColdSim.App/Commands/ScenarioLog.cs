using System.CommandLine;
using ColdSim.App.Text;
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

/// <summary>A log as a command uses it.</summary>
/// <param name="Use">The readings that are used.</param>
/// <param name="LeftOut">The lines that are not, each with its place and why.</param>
/// <param name="Doubtful">The lines that are used although they cannot be right.</param>
/// <param name="Inconsistent">The readings among those that are left out.</param>
internal sealed record ReadLog(UseLog Use, IReadOnlyList<string> LeftOut, IReadOnlyList<string> Doubtful, IReadOnlyList<InconsistentReading> Inconsistent)
{
    /// <summary>What else was measured.</summary>
    public IReadOnlyList<Measurement> Measurements { get; init; } = [];
}

/// <summary>A scenario with what its log measured, and the reading that it can start from.</summary>
/// <param name="Scenario">The scenario as it is written, with the measured values.</param>
/// <param name="Latest">The log's latest reading of contents; null where there is none to start from.</param>
internal sealed record LoggedScenario(Scenario Scenario, LatestReading? Latest);

/// <summary>
/// The log beside a scenario as commands read it: damaged lines end the command unless they are to be left out, readings that cannot be right are
/// left out, and every line that is left out is named on standard error.
/// </summary>
internal static class ScenarioLog
{
    public static Option<bool> SkipDamaged() => new("--skip-damaged") { Description = "Leave damaged lines out instead of stopping at them." };

    /// <summary>The log's latest reading, to which the run is moved, where there is one; that no run can start from it is said.</summary>
    /// <exception cref="CommandFault">The latest reading lies outside the weather, or a line is damaged.</exception>
    public static LoggedScenario Latest(string scenarioPath, Scenario scenario, bool skipDamaged, UnitStyle units, Host host)
    {
        string path = LogFile.PathOf(scenarioPath);
        if (!host.Files.Exists(path))
            return new(scenario, null);
        ReadLog read = Use(scenarioPath, scenario, skipDamaged, units, host);
        UseLog log = read.Use;
        scenario = scenario with { Measurements = read.Measurements };
        if (log.Rows.Count == 0)
        {
            string what = read.Measurements.Count == 0 ? "reading" : "reading of contents";
            host.Error.WriteLine($"the log {path} has no {what} to start from; the run starts as the scenario says");
            return new(scenario, null);
        }

        if (ForecastStart.Of(scenario, log) is { } start)
            return new(scenario, new(scenario, log, start));
        host.Error.WriteLine($"not started from {Reading(log.Rows[^1], path, scenario)}: it cannot be run on to the start; the run starts as the scenario says");
        return new(scenario, null);
    }

    /// <summary>The log as it is written, without what cannot be right.</summary>
    /// <param name="scenarioPath">The scenario's file.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="skipDamaged">Whether damaged lines are left out instead of refused.</param>
    /// <param name="units">The person's units.</param>
    /// <param name="host">Where the command runs.</param>
    /// <param name="keepInconsistent">Whether readings that cannot be right are used too; they are named all the same.</param>
    public static ReadLog Read(string scenarioPath, Scenario scenario, bool skipDamaged, UnitStyle units, Host host, bool keepInconsistent = false)
    {
        ReadLog log = Lines(scenarioPath, scenario, skipDamaged, units, host, keepInconsistent, orNone: "");
        Say(log, host);
        return log;
    }

    private static void Say(ReadLog log, Host host)
    {
        foreach (string line in log.LeftOut)
            host.Error.WriteLine($"left out: {line}");
        foreach (string line in log.Doubtful)
            host.Error.WriteLine($"used, but it looks wrong: {line}");
    }

    private static ReadLog Lines(string scenarioPath, Scenario scenario, bool skipDamaged, UnitStyle units, Host host, bool keepInconsistent, string orNone)
    {
        string path = LogFile.PathOf(scenarioPath);
        if (scenario.Rig.Gas.IsMixed)
            throw CommandFault.Input($"coldsim: the readings in {path} can be turned into contents for propane alone, and the gas here is {scenario.Rig.Gas.Name}{orNone}");
        if (!host.Files.Exists(path))
            throw CommandFault.Input($"coldsim: there is no log '{path}'; begin one with 'coldsim log add {scenarioPath} --weight \"31.2 lb\"'");
        LogResult log = LogReader.Read(path, scenario.Rig);
        if (log.IsUnreadable)
            throw CommandFault.Input([.. log.Damaged.Select(d => d.ToString()), "coldsim: nothing was run; --no-log runs without the log"]);
        if (log.Damaged.Count > 0 && !skipDamaged)
        {
            int lines = log.Damaged.Select(d => d.Line).Distinct().Count();
            string count = lines == 1 ? "1 damaged line" : $"{lines} damaged lines";
            throw CommandFault.Input([.. log.Damaged.Select(d => d.ToString()), $"coldsim: {count} in the log; mend them, or leave them out with --skip-damaged"]);
        }

        LogConsistency consistency = LogConsistency.Of(log.Readings, scenario);
        IReadOnlyList<string> wrong = [.. consistency.LeftOut.Select(r => InconsistencyWords.LeftOut(r, path, scenario, units).ToString())];
        IReadOnlyList<string> damaged = [.. log.Damaged.Select(d => d.ToString())];
        return keepInconsistent
            ? new(UseLog.Of(log.Readings, scenario.Rig), damaged, wrong, []) { Measurements = log.Measurements }
            : new(consistency.Kept, [.. damaged, .. wrong], [], consistency.LeftOut) { Measurements = log.Measurements };
    }

    // The log of a command that starts somewhere: its latest reading must lie where it can start.
    private static ReadLog Use(string scenarioPath, Scenario scenario, bool skipDamaged, UnitStyle units, Host host)
    {
        string path = LogFile.PathOf(scenarioPath);
        ReadLog log = Lines(scenarioPath, scenario, skipDamaged, units, host, keepInconsistent: false, "; --no-log runs without them");

        // A wrong year that makes a reading the latest is not left out: what is left is known, and only its time is not.
        InconsistentReading? wrongYear = log.Inconsistent.LastOrDefault(r => r.Kind == Inconsistency.WrongYear && (log.Use.Rows.Count == 0 || r.Row.Reading.Time > log.Use.Rows[^1].Reading.Time));
        UseLog use = wrongYear is null ? log.Use : UseLog.Of([.. log.Use.Rows.Select(r => r.Reading), wrongYear.Row.Reading], scenario.Rig);
        LatestTime time = ForecastStart.TimeOf(scenario, use);
        if (time is not (LatestTime.AfterEnd or LatestTime.BeforeWeather))
        {
            Say(log, host);
            foreach (string filling in FeedWords.Noticed(log.Use, scenario.Rig, scenario.Start.Offset))
                host.Error.WriteLine(filling);
            return log;
        }

        LogReading latest = use.Rows[^1].Reading;
        string what = time == LatestTime.BeforeWeather
            ? $"is earlier than the weather, which begins {Day(scenario.Weather.First, scenario)}"
            : scenario.Trip is null ? $"is later than the weather, which ends {Day(scenario.Weather.Last, scenario)}"
            : $"is later than the last stop, which ends {Day(ForecastStart.EndOf(scenario), scenario)}";
        List<string> lines =
        [
            $"{path}:{latest.Line}:1: the log's latest reading, {Day(latest.Time, scenario)} with {units.Mass(use.Rows[^1].Contents.Mass.Kilograms)} left, {what}",
            .. wrongYear?.Meant is { } meant ? [$"Its year looks wrong: if {Day(meant, scenario)} is meant, correct it in the log."] : Array.Empty<string>(),
            "coldsim: nothing was run, for it cannot start from that reading. What you can do:",
            scenario.Trip is null ? "  get weather that reaches from that reading on, and name it in [weather]" : "  give the trip a stop, with its weather, that reaches from that reading on",
            "  --no-log starts as the scenario says, without the log",
        ];
        if (TonightLine.Of(scenario, use, units) is { } tonight)
            lines.AddRange(["  for tonight alone, with your own low in place of this one:", $"  {tonight}"]);
        throw CommandFault.Input(lines);
    }

    /// <summary>Says how many readings are older than the weather: a log that is kept for weeks is longer than a forecast.</summary>
    public static void SayBeforeWeather(string scenarioPath, LatestReading latest, Host host)
    {
        (UseLog log, string path, Scenario scenario) = (latest.Log, LogFile.PathOf(scenarioPath), latest.Before);
        int before = log.Rows.Count(r => r.Reading.Time < scenario.Weather.First);
        if (before > 0)
            host.Error.WriteLine($"{(before == 1 ? "1 reading" : FormattableString.Invariant($"{before} readings"))} of {path} from before the weather begins, {Day(scenario.Weather.First, scenario)}, {(before == 1 ? "is" : "are")} not compared with it");
    }

    private static string Reading(LogRow row, string path, Scenario scenario)
        => $"the log's latest reading, {path}:{row.Reading.Line}, {Day(row.Reading.Time, scenario)}";

    private static string Day(DateTimeOffset time, Scenario scenario) => ClockText.DayOfYear(time.ToOffset(scenario.Start.Offset));
}
