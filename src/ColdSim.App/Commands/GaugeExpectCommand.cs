using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim gauge expect</c>: what scale, level, pressure gauge and echo show at a time of a run.</summary>
internal static class GaugeExpectCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string?> at = new("--at")
        {
            HelpName = "TIME",
            Description = "When, such as 2027-01-15T04:00; 04:00 alone is the first one of the run. "
                + "Unless given, when the liquid is coldest in the first night.",
        };
        Option<string?> cylinder = new("--cylinder")
        {
            HelpName = "NAME",
            Description = "Which cylinder, where the scenario has several. [the one in use then]",
        };
        Option<string?> assumed = CommonOptions.Quantity(
            "--assumed-temperature", "T", "The liquid temperature that an echo sensor assumes. [20 °C]");
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        StartOptions log = new();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "expect",
            "Say what a scale, a level, a pressure gauge and an echo should show at a time of a run, and the same once it has warmed.",
            "coldsim gauge expect trip.toml --at 04:00",
            "coldsim gauge expect trip.toml --at 2027-01-15T04:00 --cylinder left",
            "coldsim gauge expect trip.toml --json > gauges.json")
        { file, at, cylinder, assumed, units, json, log.Weather, log.NoLog, log.SkipDamaged, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<ExpectedReadings> Question(ParseResult parsed)
        {
            Scenario scenario = StartedScenario.Read(parsed.GetRequiredValue(file), parsed, log, parsed.UnitStyle(units), host).Scenario;
            ExpectQuestion question = new GaugeExpectInput(parsed, at, cylinder, assumed).Of(scenario);
            return new()
            {
                Answer = (_, cancel) => Expected(scenario, question, cancel),
                Ledgers = new("these readings", e => LedgerLine.IfOpen(e.Run.Ledger)),
                OnScreen = ExpectedAnswer.Of,
                Text = (e, to) => to.Write(ExpectedText.Sections(e, to.Units, Cautions.Short)),
                BesideJson = e => ScenarioFile.Assumed(e.Run.Scenario),
                Json = JsonReport.Write,
            };
        }
    }

    private static ExpectedReadings Expected(Scenario scenario, ExpectQuestion question, CancellationToken cancel)
        => CommonOptions.WithinRun(
            scenario, () => ExpectedReadings.Of(NightRun.Of(scenario, cancel), question.At, question.Cylinder, question.Assumed_K));
}
