using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Logs;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Logs;
using ColdSim.Planning.Measurements;

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
        o.Cylinder.CompletionSources.Add(CompletionsCommand.CylinderNames(file, host));
        ExampleCommand command = new(
            "add",
            "Append readings to the scenario's log, a line each.",
            "coldsim log add trip.toml --weight \"31.2 lb\" --note \"before supper\"",
            "coldsim log add trip.toml --at 2027-01-13T07:00-07:00 --line \"5.1 in\" \\",
            "    --temperature \"10 °F\"",
            "coldsim log add trip.toml --weight \"37.4 lb\" --filled",
            "coldsim log add trip.toml --inside \"57 °F\" --liquid \"-4 °F\"",
            "coldsim log add trip.toml --cylinder left --weight \"31.2 lb\"")
        { file };
        foreach (Option option in o.All)
            command.Options.Add(option);
        command.SetWork(host, Question);
        return command;

        CommandWork<IReadOnlyList<LogEntry>> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file), log = LogFile.PathOf(path);
            Scenario scenario = ScenarioFile.Read(path, host);
            IReadOnlyList<LogEntry> entries = ReadingDoubts.Confirmed(new LogInput(parsed, o, scenario, host.Clock).Entries(), log, scenario, host);
            return new()
            {
                // Nobody stops the writing of a reading.
                OutlivesInterrupt = true,
                Answer = (_, _) =>
                {
                    host.Files.Append(log, entries);
                    return entries;
                },
                Text = (written, to) => to.Write([.. written.Select(e => LogText.Entry(e, scenario.Rig, to.Units)), $"written to {log}"]),
            };
        }
    }

    private static ExampleCommand Show(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string?> weather = CommonOptions.Weather();
        Option<bool> skip = ScenarioLog.SkipDamaged();
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "show",
            "List and check the log: what each reading means, what was used, and what the weather would have predicted.",
            "coldsim log show trip.toml",
            "coldsim log show trip.toml --json > readings.json")
        { file, weather, skip, units, json, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<ShownLog> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = ScenarioFile.Read(path, host, parsed.GetValue(weather));
            ReadLog log = ScenarioLog.Read(path, scenario, parsed.GetValue(skip), parsed.UnitStyle(units), host);
            scenario = scenario with { Measurements = log.Measurements };
            return new()
            {
                Answer = (_, cancel) => new(LogPrediction.Of(scenario, log.Use, null, cancel), MeasuredComparison.ThroughLog(scenario, log.Use, cancel)),
                OnScreen = (shown, style) => LogAnswer.Of(shown.Readings, shown.Measured, scenario, style),
                Text = (shown, to) => to.Write(LogText.Sections(shown.Readings, shown.Measured, scenario, to.Units, Cautions.Short)),
                Json = (shown, stream) => JsonReport.Write(new LogDocument(LogReport.Of(shown.Readings, scenario, log.LeftOut), shown.Measured, scenario), stream),
            };
        }
    }

    /// <summary>A log beside the simulator.</summary>
    /// <param name="Readings">Its readings of contents.</param>
    /// <param name="Measured">Whatever else was measured.</param>
    private sealed record ShownLog(LogPrediction Readings, MeasuredComparison Measured);
}
