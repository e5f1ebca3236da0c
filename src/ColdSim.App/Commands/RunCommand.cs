using System.CommandLine;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim run</c>: a scenario file, night by night.</summary>
internal static class RunCommand
{
    private const int MostNights = 400;
    private const double LongestStep_s = 300;

    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<double?> nights = CommonOptions.Number("--nights", "N", "Nights to run, instead of the scenario's.", 1, MostNights, whole: true);
        Option<double?> step = CommonOptions.Number(
            "--step", "SECONDS", "Longest time step, instead of the scenario's.", 1, LongestStep_s, whole: false);
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        Option<string?> csv = new("--csv") { HelpName = "PATH", Description = "Also write the curves, a row a minute, to this file." };
        Option<bool> fail = CommonOptions.FailIfShort();
        Option<bool> noLog = FromLog.NoLog();
        Option<bool> skip = LogCommand.SkipDamaged();
        ChanceOptions chance = new();
        ExampleCommand command = new(
            "run",
            "Run a scenario: one sentence a night, the nights as a table, the events.",
            "coldsim run trip.toml",
            "coldsim run trip.toml --nights 3 --units si",
            "coldsim run trip.toml --csv curves.csv",
            "coldsim run trip.toml --json > report.json",
            "coldsim run trip.toml --fail-if-short || echo 'take another cylinder'",
            "coldsim run trip.toml --members 1000",
            "coldsim run trip.toml --years record.epw")
        { file, nights, step, units, json, csv, fail, noLog, skip, chance.Members, chance.Seed, chance.Years };
        command.SetAction(async (parsed, cancel) =>
        {
            string path = parsed.GetRequiredValue(file);
            ScenarioReading reading = ScenarioFile.Good(path, host);
            Scenario scenario = reading.Scenario!;
            FromLog? latest = parsed.GetValue(noLog) ? null : FromLog.Of(path, scenario, parsed.GetValue(skip), host);
            scenario = latest?.Start.Scenario ?? scenario;

            if (parsed.GetValue(nights) is { } n)
                scenario = OtherNights.In(scenario, (int)n);
            if (parsed.GetValue(step) is { } s)
                scenario = scenario with { Step_s = s };
            if (chance.Asked(parsed))
            {
                if (parsed.GetValue(csv) is not null)
                    throw CommandFault.Input("coldsim: --csv writes the curves of one run; it does not go with --members or --years");
                ChanceAnswer many = new(host, parsed.UnitStyle(units), parsed.GetValue(json), parsed.GetValue(fail));
                ChanceQuestion question = ChanceQuestion.Of(scenario, reading.Options, latest?.Start.Newest);
                return await many.GiveAsync(question, chance.Read(parsed, question.Scenario, host), cancel).ConfigureAwait(false);
            }

            Answer answer = new(host, parsed.UnitStyle(units), parsed.GetValue(json), parsed.GetValue(fail))
            {
                CsvPath = CsvTarget.Checked(parsed.GetValue(csv), path),
                Latest = latest,
            };
            return await answer.GiveAsync(scenario, cancel).ConfigureAwait(false);
        });
        return command;
    }
}
