using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Sensitivity;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim explain</c>: why gas runs short, in the numbers of the run, and what would have held.</summary>
internal static class ExplainCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string?> at = new("--at")
        {
            HelpName = "TIME",
            Description = "Say what limits the gas at this time instead, such as 2027-01-15T03:00; 03:00 alone is the first one of the run.",
        };
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        StartOptions log = new();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "explain",
            "Say why gas first runs short, which limit binds, and what to do.",
            "coldsim explain trip.toml",
            "coldsim explain trip.toml --at 03:00",
            "coldsim explain trip.toml --json > why.json")
        { file, at, units, json, log.Weather, log.NoLog, log.SkipDamaged, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<ExplainedRun> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host).Scenario;
            DateTimeOffset? time = parsed.GetValue(at) is { } text ? CommonOptions.At(text, scenario, "explain") : null;
            bool advise = length.WantsAdvice(parsed, json) && time is null;
            return new()
            {
                Answer = (done, cancel) => WithAdvice(Explain(scenario, parsed.UnitStyle(units), time, done, cancel), advise, cancel),
                Progress = done => $", {done} runs done",
                Ledgers = new("this explanation", _ => []),
                OnScreen = (e, to) => ExplainAnswer.Of(e.Of, e.Guesses, e.BelowMinimum, to),
                Text = (e, to) => to.Write(ExplainText.Sections(e.Of, to.Units, Cautions.Short)),
                BesideJson = e => ScenarioFile.Assumed(e.Of.Report.Scenario),
                Json = (e, stream) => JsonReport.Write(e.Of, stream),
            };
        }
    }

    // What a run's answer hangs on takes further runs, which a document does not need.
    private sealed record ExplainedRun(Explanation Of, IReadOnlyList<InputEffect> Guesses, MinimumInletEffect? BelowMinimum);

    private static ExplainedRun WithAdvice(Explanation explanation, bool advise, CancellationToken cancel)
    {
        RunReport report = explanation.Report;
        return advise
            ? new(explanation, InputSensitivity.Of(report.Scenario, report.Summary, cancel: cancel), MinimumInletEffect.Of(report, cancel))
            : new(explanation, [], null);
    }

    private static Explanation Explain(Scenario scenario, UnitStyle units, DateTimeOffset? at, IProgress<int> done, CancellationToken cancel)
        => CommonOptions.WithinRun(scenario, () => Explanation.Of(scenario, units.Grid, at, () => done.Report(1), cancel: cancel));
}
