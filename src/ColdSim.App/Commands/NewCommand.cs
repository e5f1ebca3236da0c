using System.CommandLine;
using ColdSim.Files.Scenarios;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim new</c>: a commented scenario to start from.</summary>
internal static class NewCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("File to write; it must not exist yet.");
        ExampleCommand command = new("new", "Write a commented scenario to start from, with weather beside it.", "coldsim new trip.toml") { file };
        command.SetWork(host, parsed => Work(parsed.GetRequiredValue(file), host));
        return command;
    }

    private static CommandWork<string> Work(string path, Host host)
    {
        if (host.Files.Exists(path) || host.Files.FolderExists(path))
            throw CommandFault.Input($"coldsim: '{path}' exists already and is left as it is");
        if (!host.Files.FolderExists(Path.GetDirectoryName(Path.GetFullPath(path))!))
            throw CommandFault.Input($"coldsim: there is no folder '{Path.GetDirectoryName(path)}'");
        return new()
        {
            Answer = (_, _) => StarterScenario.Write(path),
            OutlivesInterrupt = true,
            Text = (weather, to) => to.Write(
                [$"{path} written, with invented weather in {weather}.", $"Fill them in, then 'coldsim check {path}' and 'coldsim run {path}'."]),
        };
    }
}
