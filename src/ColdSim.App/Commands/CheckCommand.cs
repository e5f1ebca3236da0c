using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Planning;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim check</c>: reads everything, runs nothing.</summary>
internal static class CheckCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("Scenario file.");
        Option<string> units = CommonOptions.Units();
        ExampleCommand command = new(
            "check",
            "Check a scenario and its weather without running it; show where the coach loses heat and what was taken.",
            "coldsim check trip.toml",
            "coldsim check trip.toml --units si")
        { file, units };
        command.SetWork(host, Question, units);
        return command;

        CommandWork<Scenario> Question(ParseResult parsed)
        {
            Scenario scenario = ScenarioFile.ReadToCheck(parsed.GetRequiredValue(file), host);
            return new() { Answer = (_, _) => scenario, Text = (read, to) => to.Write(CheckText.Sections(read, to.Units)) };
        }
    }
}
