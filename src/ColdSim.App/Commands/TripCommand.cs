using System.CommandLine;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim trip</c>: stops and refills, night by night, and how long each refill can wait.</summary>
internal static class TripCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file, with [[stop]] and [[refill]] tables.");
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        Option<string?> csv = new("--csv") { HelpName = "PATH", Description = "Also write the nights, a row each, to this file." };
        Option<bool> fail = CommonOptions.FailIfShort();
        Option<bool> noLog = FromLog.NoLog();
        Option<bool> skip = LogCommand.SkipDamaged();
        ExampleCommand command = new(
            "trip",
            "Run a trip of several stops with its refills: nights, money, and how long each refill can wait.",
            "coldsim trip trip.toml",
            "coldsim trip trip.toml --units si --csv nights.csv",
            "coldsim trip trip.toml --json > trip.json")
        { file, units, json, csv, fail, noLog, skip };
        command.SetAction(async (parsed, cancel) =>
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = ScenarioFile.Read(path, host);
            if (!parsed.GetValue(noLog) && FromLog.Of(path, scenario, parsed.GetValue(skip), host) is { } latest)
                scenario = latest.Start.Scenario;
            TripAnswer answer = new(host, parsed.UnitStyle(units), parsed.GetValue(json), parsed.GetValue(fail))
            {
                CsvPath = CsvTarget.Checked(parsed.GetValue(csv), path),
            };
            return await answer.GiveAsync(scenario, cancel).ConfigureAwait(false);
        });
        return command;
    }
}
