using System.CommandLine;
using ColdSim.Files.Scenarios.Schemas;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim schema</c>: the form of the scenario file, for editors.</summary>
internal static class SchemaCommand
{
    public static Command Of(Host host)
    {
        ExampleCommand command = new(
            "schema",
            "Print the JSON Schema of the scenario file, by which an editor completes and checks it; 'new' writes it as "
                + $"{ScenarioSchema.FileName}.",
            $"coldsim schema > {ScenarioSchema.FileName}");
        command.SetAction(_ =>
        {
            host.Out.Write(ScenarioSchema.Text());
            return ExitCode.Done;
        });
        return command;
    }
}
