using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim check</c>: reads everything, runs nothing.</summary>
internal static class CheckCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string> units = CommonOptions.Units();
        Option<string?> weather = CommonOptions.Weather();
        AnswerOptions length = new();
        ExampleCommand command = new(
            "check",
            "Check a scenario and its weather without running it; show where the coach loses heat and what is assumed.",
            "coldsim check trip.toml",
            "coldsim check trip.toml --units si")
        { file, weather, units, length.Full, length.Brief };
        command.SetWork(host, Question, units, length: length);
        return command;

        CommandWork<Scenario> Question(ParseResult parsed)
        {
            Scenario scenario = ScenarioFile.ReadToCheck(parsed.GetRequiredValue(file), host, parsed.GetValue(weather));
            int warnings = host.Notices.Count;

            // Every other command points here for those that it has no room for.
            host.Notices.SayAll();
            return new()
            {
                Answer = (_, _) => scenario,
                OnScreen = (read, style) => CheckAnswer.Of(read, warnings, style),
                Text = (read, to) => to.Write(CheckText.Sections(read, to.Units)),
            };
        }
    }
}
