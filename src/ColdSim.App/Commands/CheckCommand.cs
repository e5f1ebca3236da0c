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
        command.SetAction(parsed =>
        {
            Scenario scenario = ScenarioFile.Read(parsed.GetRequiredValue(file), host);
            UnitStyle style = parsed.UnitStyle(units);
            RunText.Write(host.Out, CheckText.Sections(scenario, style), host.OutIsTerminal && host.Color);
            return ExitCode.Done;
        });
        return command;
    }
}
