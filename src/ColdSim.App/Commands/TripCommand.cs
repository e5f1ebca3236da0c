using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Harms;
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
        StartOptions log = new();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "trip",
            "Run a trip of several stops with its refills: nights, money, and how long each refill can wait.",
            "coldsim trip trip.toml",
            "coldsim trip trip.toml --units si --csv nights.csv",
            "coldsim trip trip.toml --json > trip.json")
        { file, units, json, csv.Path, csv.Separator, csv.Force, fail, log.Weather, log.NoLog, log.SkipDamaged, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<Advised<TripReport>> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host).Scenario;
            bool failIfShort = parsed.GetValue(fail), advise = length.WantsAdvice(parsed, json);
            return new()
            {
                Answer = (done, cancel) => WithGuesses(TripRun.Of(scenario, done, cancel: cancel), advise, cancel),
                Progress = done => $", {done} other days tried",
                Ledgers = new("this trip", t => LedgerLine.IfOpen(t.Of.Run.Ledger)) { With = "the scenario and its weather files" },
                OnScreen = (t, to) => TripAnswer.Of(t.Of, t.Guesses, to),
                Text = (t, to) => to.Write(TripText.Sections(t.Of, to.Units, Cautions.Short)),
                BesideJson = t => ScenarioFile.Assumed(t.Of.Run.Scenario),
                Json = (t, stream) => JsonReport.Write(t.Of, stream),
                Files = csv.Of<Advised<TripReport>>(parsed, host, CsvReport.TripKind, _ => "nights", (t, to) => CsvReport.Write(t.Of, to, csv.Form(parsed, units))),
                Fails = t => failIfShort && t.Of.Run.Summary.Verdict != Verdict.Holds,
            };
        }
    }

    private static Advised<TripReport> WithGuesses(TripReport trip, bool advise, CancellationToken cancel)
        => Advised.With(trip, advise, trip.Run.Scenario, trip.Run.Summary, cancel);
}
