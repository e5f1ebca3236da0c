using System.CommandLine;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Disk;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim weather FILE --map</c>: a column map proposed for a table of no known layout, and written.</summary>
internal static class MapWork
{
    /// <summary>The work.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="path">The table.</param>
    /// <param name="o">The command's options.</param>
    /// <param name="json">The option that asks for JSON, which a map has none of.</param>
    /// <param name="host">Where it runs.</param>
    /// <exception cref="CommandFault">The map cannot go there, or another option does not go with it.</exception>
    public static CommandWork<MapProposal> Of(ParseResult parsed, string path, WeatherOptions o, Option<bool> json, Host host)
    {
        string? other = parsed.GetValue(json) ? "--json" : parsed.GetValue(o.Columns) is not null ? "--columns" : parsed.GetValue(o.Format) is not null ? "--format"
            : parsed.GetValue(o.Night) is not null ? "--night" : o.Output.IsGiven(parsed) ? "--out" : null;
        if (other is not null)
            throw CommandFault.Input($"coldsim: --map proposes a map and reads nothing by it; drop {other}, or give the map that is written with --columns");
        TimeSpan? offset = new WeatherInput(parsed, o, host.Files).Question(path).Request.Offset;
        host.Files.Reads.Add(path);
        string to = parsed.GetValue(o.Map) is { Length: > 0 } named ? named : Path.GetFileNameWithoutExtension(path) + ".columns.toml";
        OutputFile file = new(to, MapText.Kind, parsed.GetValue(o.Output.Force));
        OutputOption.Check(file, host, "--map: ");
        return new()
        {
            Answer = (_, _) => Propose(path, offset, host),
            OnScreen = (a, style) => MapAnswer.Of(a, style, to),
            Text = (a, text) => text.Write(Lines(a)),
            Files = [new FileOutput<MapProposal>(file, MapText.Write, _ => $"map written to {to}")],
        };
    }

    private static string[] Lines(MapProposal proposal)
    {
        using StringWriter map = new() { NewLine = "\n" };
        MapText.Write(proposal, map);
        return map.ToString().TrimEnd('\n').Split('\n');
    }

    private static MapProposal Propose(string path, TimeSpan? offset, Host host)
    {
        using Stream stream = WeatherReading.OpenFile(path, host);
        (MapProposal? proposal, FileProblem? problem) = MapProposer.Of(stream, path, offset);
        return proposal ?? throw CommandFault.Input(problem!.ToString());
    }
}
