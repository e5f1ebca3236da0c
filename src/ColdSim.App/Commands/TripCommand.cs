using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Trips;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim trip</c>: stops and refills, night by night, and how long each refill can wait.</summary>
internal static class TripCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file, with [[stop]] and [[refill]] tables.");
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        OutputOption csv = OutputOption.Csv("Also write the nights, a row each, to this file.");
        Option<bool> fail = CommonOptions.FailIfShort();
        LogStartOptions log = new();
        ExampleCommand command = new(
            "trip",
            "Run a trip of several stops with its refills: nights, money, and how long each refill can wait.",
            "coldsim trip trip.toml",
            "coldsim trip trip.toml --units si --csv nights.csv",
            "coldsim trip trip.toml --json > trip.json")
        { file, units, json, csv.Path, csv.Force, fail, log.NoLog, log.SkipDamaged };
        command.SetWork(host, Question, units, json);
        return command;

        CommandWork<TripReport> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host).Scenario;
            bool failIfShort = parsed.GetValue(fail);
            return new()
            {
                Answer = (done, cancel) => TripRun.Of(scenario, done, cancel: cancel),
                Progress = done => $", {done} other days tried",
                Ledgers = new("this trip", t => LedgerLine.IfOpen(t.Run.Ledger)) { With = "the scenario and its weather files" },
                Text = (t, to) => to.Write(TripText.Sections(t, to.Units, Cautions.Short)),
                BesideJson = t => ScenarioFile.Assumed(t.Run.Scenario),
                Json = JsonReport.Write,
                Files = csv.Of<TripReport>(parsed, host, CsvReport.TripKind, _ => "nights", CsvReport.Write),
                Fails = t => failIfShort && t.Run.Summary.Verdict != Verdict.Holds,
            };
        }
    }
}
