using System.CommandLine;
using System.Text;
using ColdSim.Files;
using ColdSim.Files.Disk;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Starters;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim new</c>: a commented scenario to start from.</summary>
internal static class NewCommand
{
    public static Command Of(Host host)
    {
        Argument<string?> file = new("FILE")
        {
            Description = "File to write; one that is there already is replaced only if nothing was changed in it since.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        Option<bool> mine = new("--mine") { Description = "Write it where coldsim keeps your own rig, which 'coldsim tonight' and 'coldsim' alone use." };
        Option<bool> force = CommonOptions.Force();
        StarterOptions options = new();
        ExampleCommand command = new(
            "new",
            "Write a commented scenario to start from, with weather beside it. At a terminal it asks eight questions; with an option that answers one, none.",
            "coldsim new trip.toml",
            "coldsim new --mine",
            "coldsim new trip.toml --kind changeover",
            "coldsim new trip.toml --cylinders \"11 kg half\" --coach \"6 m, good\" \\",
            "    --furnace \"4 kW\" --weather \"-12 °C, -9 °C\"") { file, mine, force };
        foreach (Option option in options.All)
            command.Options.Add(option);
        command.SetWork(host, parsed =>
        {
            string path = Target(parsed.GetValue(file), parsed.GetValue(mine), host);
            StarterRig? rig = options.AreGiven(parsed) ? options.Rig(parsed, path, host)
                : host is { Answer: not null, OutIsTerminal: true } ? StarterInterview.Ask(path, host) : null;
            return Work(path, rig, parsed.GetValue(force), host);
        });
        return command;
    }

    private static string Target(string? file, bool mine, Host host)
    {
        if (!mine)
            return file ?? throw CommandFault.Input("coldsim: FILE is missing; or give --mine", "See 'coldsim new --help'.");
        if (file is not null)
            throw CommandFault.Input($"coldsim: --mine says where the file goes; drop '{Quote.OfPath(file)}' or --mine", "See 'coldsim new --help'.");
        string path = KeptRig.PathIn(host) ?? throw CommandFault.Input("coldsim: --mine: there is no folder for your settings; set HOME or XDG_CONFIG_HOME, or name a file");
        return path;
    }

    private static CommandWork<string> Work(string path, StarterRig? rig, bool force, Host host)
    {
        if (path == KeptRig.PathIn(host))
            host.Files.MakeFolder(Path.GetDirectoryName(path)!);
        IReadOnlyList<(string Path, string Text)> starters = rig is null ? StarterScenario.FilesOf(path) : StarterFiles.Of(rig, path, host.Clock.GetLocalNow());
        (OutputFile File, string Text)[] files = [.. starters.Select(f => (new OutputFile(f.Path, Unchanged(f.Text), force), f.Text))];
        foreach ((OutputFile starter, _) in files)
            OutputOption.Check(starter, host);
        string weather = rig?.WeatherFile is { } named ? $", with the weather of {named}" : rig?.Lows.Count > 0 ? $", with weather of those lows in {files[0].File.Path}" : $", with invented weather in {files[0].File.Path}";
        return new()
        {
            Answer = (_, _) =>
            {
                foreach ((OutputFile starter, string text) in files)
                    host.Files.Write(starter, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
                return weather;
            },
            OutlivesInterrupt = true,
            Text = (_, to) => to.Write(
                [$"{path} written{weather}.", $"Fill them in, then 'coldsim check {path}' and 'coldsim run {path}'."]),
        };
    }

    // Whatever a person changed in a starter is theirs.
    private static OutputKind Unchanged(string text) => new("an unchanged starter file", there => there == text);
}
