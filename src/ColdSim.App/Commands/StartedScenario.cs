using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Scenarios;
using ColdSim.Planning;
using ColdSim.Planning.Compare;

namespace ColdSim.App.Commands;

/// <summary>A scenario as every command starts it: from the latest reading of its log where it has one.</summary>
/// <param name="Scenario">The scenario, moved to the reading.</param>
/// <param name="Options">Its options, moved likewise; those that set a cylinder's size or contents keep their own.</param>
/// <param name="Latest">The reading; null where it starts as the scenario says.</param>
internal sealed record StartedScenario(Scenario Scenario, IReadOnlyList<ComparedOption> Options, LatestReading? Latest)
{
    /// <summary>Reads a scenario and its log, and says first from which reading it starts.</summary>
    /// <param name="path">The scenario's file.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="options">The command's options for the log.</param>
    /// <param name="units">The person's units.</param>
    /// <param name="host">Where the command runs.</param>
    /// <exception cref="CommandFault">The file or the log is faulty, or no run can start from the latest reading.</exception>
    public static StartedScenario Read(string path, ParseResult parsed, StartOptions options, UnitStyle units, Host host)
        => Read(path, !parsed.GetValue(options.NoLog), parsed.GetValue(options.SkipDamaged), units, host, parsed.GetValue(options.Weather));

    /// <summary>The same without a command line.</summary>
    /// <param name="path">The scenario's file.</param>
    /// <param name="withLog">Whether its log is read.</param>
    /// <param name="skipDamaged">Whether damaged lines of the log are left out instead of refused.</param>
    /// <param name="units">The person's units.</param>
    /// <param name="host">Where the command runs.</param>
    /// <param name="weather">A weather file in place of the scenario's; null for that.</param>
    /// <exception cref="CommandFault">As above.</exception>
    public static StartedScenario Read(string path, bool withLog, bool skipDamaged, UnitStyle units, Host host, string? weather = null)
    {
        ReadResult read = ScenarioFile.ReadWithOptions(path, host, weather);
        Scenario scenario = read.Scenario!;
        if (!withLog)
            return new(scenario, read.Options, null);
        LoggedScenario logged = ScenarioLog.Latest(path, scenario, skipDamaged, units, host);
        if (logged.Latest is not { } latest)
            return new(logged.Scenario, read.Options, null);
        host.Error.WriteLine(LogStartLine.Of(latest.Start.Scenario.StartedFrom!, units));
        foreach (string line in LogStartLine.Cylinders(latest.Start.Scenario.StartedFrom!, units))
            host.Error.WriteLine(line);
        ErrorSizes errors = scenario.Errors with { Reading = new(latest.Start.Newest.Contents.StandardUncertainty.Kilograms, "the log's latest reading") };
        return new(
            latest.Start.Scenario with { Errors = errors },
            [.. read.Options.Select(o => o with { Scenario = latest.Start.Applied(o.Scenario, o.OwnCylinders) })],
            latest);
    }
}

/// <summary>The options of a command that runs a scenario from the log's latest reading.</summary>
internal sealed class StartOptions
{
    /// <summary>Reads other weather.</summary>
    public Option<string?> Weather { get; } = CommonOptions.Weather();

    /// <summary>Starts as the scenario says.</summary>
    public Option<bool> NoLog { get; } = new("--no-log") { Description = "Do not read the log: start as the scenario is written." };

    /// <summary>Leaves damaged lines of the log out.</summary>
    public Option<bool> SkipDamaged { get; } = ScenarioLog.SkipDamaged();
}
