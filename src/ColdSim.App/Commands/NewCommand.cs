using System.CommandLine;
using System.Text;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Disk;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Schemas;
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
        Option<string> units = CommonOptions.Choice("--units", "Units of examples and of what is not known: us or si.", ["us", "si"], "us");
        ExampleCommand command = new(
            "new",
            "Write a commented scenario to start from, with weather beside it. At a terminal it asks nine questions; "
                + "with an option that answers one, none.",
            "coldsim new trip.toml",
            "coldsim new --mine",
            "coldsim new trip.toml --kind changeover",
            "coldsim new trip.toml --cylinders \"11 kg half\" --coach \"6 m, good\" \\",
            "    --furnace \"4 kW\" --weather \"-12 °C, -9 °C\"") { file, mine, units, force };
        foreach (Option option in options.All)
            command.Options.Add(option);
        command.SetAction(async (parsed, cancel) =>
        {
            string path = Target(parsed.GetValue(file), parsed.GetValue(mine), host);
            bool replace = parsed.GetValue(force);
            bool metric = parsed.GetValue(units) == "si";
            StarterRig? rig = null;
            if (options.AreGiven(parsed))
                rig = options.Rig(parsed, path, metric, host);
            else if (host is { Answer: not null, OutIsTerminal: true })
                rig = await AskAsync(path, metric, replace, host, cancel).ConfigureAwait(false);
            else if (metric)
                rig = StarterRig.Unknown(metric);
            return await CommandRunner.RunAsync(Work(path, rig, replace, host), host, UnitStyle.Us, json: false, AnswerLength.Screen, cancel).ConfigureAwait(false);
        });
        return command;
    }

    // On a thread of its own, which an interrupt does not wait for: it may be waiting for a person.
    private static Task<StarterRig> AskAsync(string path, bool metric, bool force, Host host, CancellationToken cancel)
    {
        foreach ((string there, string text) in WithSchema(path, StarterScenario.FilesOf(path)))
            OutputOption.Check(new OutputFile(there, Kind(there, path, text), force), host);
        return Task.Run(() => StarterInterview.Ask(path, metric, host), cancel).WaitAsync(cancel);
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

    internal static CommandWork<string> Work(string path, StarterRig? rig, bool force, Host host)
    {
        if (path == KeptRig.PathIn(host))
            host.Files.MakeFolder(Path.GetDirectoryName(path)!);
        List<(string Path, string Text)> starters = WithSchema(
            path, rig is null ? StarterScenario.FilesOf(path) : StarterFiles.Of(rig, path, host.Clock.GetLocalNow()));
        (OutputFile File, string Text)[] files =
            [.. starters.Select(f => (new OutputFile(f.Path, Kind(f.Path, path, f.Text), force), f.Text))];
        foreach ((OutputFile starter, _) in files)
            OutputOption.Check(starter, host);
        string weather = rig?.WeatherFile is { } named ? $", with the weather of {named}"
            : $", with {(rig?.Lows.Count > 0 ? "weather of those lows" : "invented weather")} in {files[0].File.Path}";
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
                [
                    $"{path} written{weather}.",
                    $"An editor that knows TOML completes and checks it by {ScenarioSchema.FileName}.",
                    $"Fill them in, then 'coldsim check {path}' and 'coldsim run {path}'.",
                ]),
        };
    }

    // The starter's files, of which the scenario names the schema beside it in its first line.
    private static List<(string Path, string Text)> WithSchema(string scenario, IReadOnlyList<(string Path, string Text)> starters)
    {
        List<(string Path, string Text)> files = [.. starters];
        int last = files.Count - 1;
        files[last] = (files[last].Path, $"{ScenarioSchema.Line}\n{files[last].Text}");
        files.Add((SchemaPath(scenario), ScenarioSchema.Text()));
        return files;
    }

    private static string SchemaPath(string scenario) => Path.Combine(Path.GetDirectoryName(scenario) ?? "", ScenarioSchema.FileName);

    // Whatever a person changed in a starter is theirs; the schema is ours, of whichever version.
    private static OutputKind Kind(string path, string scenario, string text)
    {
        if (path == SchemaPath(scenario))
            return new("a schema that coldsim wrote", ScenarioSchema.IsOne);
        string? unasked = WithSchema(scenario, StarterScenario.FilesOf(scenario))
            .Where(f => f.Path == path).Select(f => f.Text).FirstOrDefault();
        return new("an unchanged starter file", there => there == text || there == unasked);
    }
}
