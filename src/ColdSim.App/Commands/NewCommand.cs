using System.CommandLine;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim new</c>: a commented scenario to start from.</summary>
internal static class NewCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("File to write; it must not exist yet.");
        ExampleCommand command = new("new", "Write a commented scenario to start from, with weather beside it.", "coldsim new trip.toml") { file };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            if (Path.Exists(path))
                throw CommandFault.Input($"coldsim: '{path}' exists already and is left as it is");
            string? folder = Path.GetDirectoryName(Path.GetFullPath(path));
            if (!Directory.Exists(folder))
                throw CommandFault.Input($"coldsim: there is no folder '{Path.GetDirectoryName(path)}'");
            string weather = host.Parts.WriteStarter(path);
            host.Out.WriteLine($"{path} written, with invented weather in {weather}.");
            host.Out.WriteLine($"Fill them in, then 'coldsim check {path}' and 'coldsim run {path}'.");
            return ExitCode.Done;
        });
        return command;
    }
}
