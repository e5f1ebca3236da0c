using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Results;
using ColdSim.Planning;
using ColdSim.Planning.Freezing;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim freeze</c>: how long is left once the furnace stops.</summary>
internal static class FreezeCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string[]> at = new("--at")
        {
            HelpName = "TIME",
            Description = "When the furnace stops, such as 2027-01-15T03:00; 03:00 alone is the first one of the run. Several may be given. Four times a night unless given.",
        };
        Option<string> units = CommonOptions.Units();
        Option<bool> json = CommonOptions.Json();
        StartOptions log = new();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "freeze",
            "Say how long is left once the furnace stops: until 50 °F inside, until freezing, until each pipe and tank begins to freeze.",
            "coldsim freeze trip.toml",
            "coldsim freeze trip.toml --at 03:00",
            "coldsim freeze trip.toml --json > left.json")
        { file, at, units, json, log.Weather, log.NoLog, log.SkipDamaged, length.Full, length.Brief };
        command.SetWork(host, Question, units, json, length);
        return command;

        CommandWork<FreezeOutlook> Question(ParseResult parsed)
        {
            string path = parsed.GetRequiredValue(file);
            Scenario scenario = StartedScenario.Read(path, parsed, log, parsed.UnitStyle(units), host).Scenario;
            IReadOnlyList<DateTimeOffset> instants = Instants(parsed.GetValue(at) ?? [], scenario);
            return new()
            {
                Answer = (_, cancel) => Outlook(scenario, instants, cancel),
                Ledgers = new("this", _ => []),
                OnScreen = FreezeAnswer.Of,
                Text = (o, to) => to.Write(FreezeText.Sections(o, to.Units, Cautions.Short)),
                BesideJson = o => ScenarioFile.Assumed(o.Scenario),
                Json = JsonReport.Write,
            };
        }
    }

    private static IReadOnlyList<DateTimeOffset> Instants(string[] texts, Scenario scenario)
    {
        if (texts.Length == 0)
            return scenario.HeatStops is { } stops ? [stops] : FreezeOutlook.UsualInstants(scenario);
        return [.. texts.Select(text => CommonOptions.At(text, scenario, "freeze"))];
    }

    private static FreezeOutlook Outlook(Scenario scenario, IReadOnlyList<DateTimeOffset> instants, CancellationToken cancel)
        => CommonOptions.WithinRun(scenario, () => FreezeOutlook.Of(scenario, instants, cancel));
}
