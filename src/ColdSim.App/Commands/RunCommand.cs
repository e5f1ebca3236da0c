using System.CommandLine;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim run</c>: a scenario file, night by night.</summary>
internal static class RunCommand
{
    private const double LongestStep_s = 600;

    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<double?> nights = CommonOptions.Nights();
        Option<double?> step = CommonOptions.Number(
            "--step", "SECONDS", "Longest time step, instead of the scenario's.", 1, LongestStep_s, whole: false);
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        OutputOption csv = OutputOption.Csv("Also write the curves, a row a minute, to this file.");
        Option<bool> fail = CommonOptions.FailIfShort();
        Option<string?> since = new("--since") { HelpName = "REPORT", Description = "Say what changed since an earlier answer, which 'coldsim run --json' wrote." };
        StartOptions log = new();
        AnswerOptions length = new();
        ChanceWork chance = new();
        ExampleCommand command = new(
            "run",
            "Run a scenario: does it hold, why not, what to do, night by night.",
            "coldsim run trip.toml",
            "coldsim run trip.toml --weather forecast.json",
            "coldsim run trip.toml --nights 3 --units si",
            "coldsim run trip.toml --csv curves.csv",
            "coldsim run trip.toml --json > report.json",
            "coldsim run trip.toml --since yesterday.json",
            "coldsim run trip.toml --fail-if-short || echo 'take another cylinder'",
            "coldsim run trip.toml --members 1000",
            "coldsim run trip.toml --members auto --fail-if-short",
            "coldsim run trip.toml --years record.epw")
        { file, nights, step, units, json, csv.Path, csv.Separator, csv.Force, fail, since, log.Weather, log.NoLog, log.SkipDamaged, length.Full, length.Brief, chance.Members, chance.Seed, chance.Years };
        command.SetAction((parsed, cancel) =>
        {
            string path = parsed.GetRequiredValue(file);
            StartedScenario started = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host);
            Scenario scenario = started.Scenario;
            if (started.Latest is { } latest)
                ScenarioLog.SayBeforeWeather(path, latest, host);
            if (parsed.GetValue(nights) is { } n)
                scenario = ScenarioFile.WithNights(scenario, (int)n);
            if (parsed.GetValue(step) is { } s)
                scenario = scenario with { Step_s = s };

            bool failIfShort = parsed.GetValue(fail), asJson = parsed.GetValue(json);
            AnswerLength wanted = length.Of(parsed);
            AnswerDigest? earlier = parsed.GetValue(since) is { } report ? Earlier(report, host) : null;
            if (!chance.IsAsked(parsed))
            {
                bool curves = csv.IsGiven(parsed) || wanted == AnswerLength.Full || (asJson && scenario.Measurements.Count > 0);
                RunDetail detail = curves ? RunDetail.Curves : asJson ? RunDetail.Events : RunDetail.Answer;
                CommandWork<RunAnswer> run = RunWork.Of(
                    scenario, failIfShort, started.Latest, length.WantsAdvice(parsed, json) ? parsed.UnitStyle(units) : null, detail, earlier) with
                {
                    Files = csv.Of<RunAnswer>(parsed, host, SeriesCsv.Kind, _ => "curves", (a, to) => SeriesCsv.Write(a.Report, to, csv.Form(parsed, units))),
                };
                return CommandRunner.RunAsync(run, host, parsed.UnitStyle(units), asJson, wanted, cancel);
            }

            if (earlier is not null)
                throw CommandFault.Input("coldsim: --since compares one run with another; it does not go with --members or --years");
            if (csv.IsGiven(parsed))
                throw CommandFault.Input("coldsim: --csv writes the curves of one run; it does not go with --members or --years");
            CommandWork<ChanceReport> many = chance.Work(parsed, scenario, started.Options, failIfShort, host);
            return CommandRunner.RunAsync(many, host, parsed.UnitStyle(units), asJson, wanted, cancel);
        });
        return command;
    }

    private static AnswerDigest Earlier(string path, Host host)
    {
        if (!host.Files.Exists(path))
            throw CommandFault.Input($"coldsim: --since: there is no file '{Quote.OfPath(path)}'; write one with 'coldsim run FILE --json > {Quote.OfPath(path)}'");
        using Stream stream = host.Files.Open(path);
        return EarlierReport.Read(stream, path, out FileProblem? problem) ?? throw CommandFault.Input(problem!.ToString(), "coldsim: nothing was run");
    }
}
