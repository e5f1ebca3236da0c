using System.CommandLine;
using System.Text;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim new</c>: a commented scenario to start from.</summary>
internal static class NewCommand
{
    public static Command Of(Host host)
    {
        Argument<string> file = CommonOptions.File("File to write; it must not exist yet.");
        ExampleCommand command = new("new", "Write a commented scenario to start from.", "coldsim new trip.toml") { file };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            if (Path.Exists(path))
                throw CommandFault.Input($"coldsim: '{path}' exists already and is left as it is");
            string? folder = Path.GetDirectoryName(Path.GetFullPath(path));
            if (!Directory.Exists(folder))
                throw CommandFault.Input($"coldsim: there is no folder '{Path.GetDirectoryName(path)}'");
            byte[] text = Encoding.UTF8.GetBytes(host.Parts.StarterText());
            host.Parts.WriteFile(path, stream => stream.Write(text));
            host.Out.WriteLine($"{path} written; fill it in, then 'coldsim check {path}' and 'coldsim run {path}'.");
            return ExitCode.Done;
        });
        return command;
    }
}
