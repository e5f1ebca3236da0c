using System.CommandLine;
using ColdSim.App.Commands;

namespace ColdSim.Tests.Docs;

/// <summary>The reference parts of docs/commands.md as the command tree has them.</summary>
internal static class CommandsPage
{
    /// <summary>A part for every command that can be run, by the names of their markers.</summary>
    public static IReadOnlyDictionary<string, string> Parts()
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        return CommandTree.Of(host).Subcommands.SelectMany(c => c.Subcommands.Count == 0 ? [(c.Name, Command: c)] : c.Subcommands.Select(s => ($"{c.Name} {s.Name}", Command: s)))
            .ToDictionary(c => $"command {c.Item1}", c => Part(c.Command), StringComparer.Ordinal);
    }

    private static string Part(Command command)
    {
        string[] lines =
        [
            command.Description!, "",
            "| argument, option | meaning | default |", "| --- | --- | --- |",
            .. command.Arguments.Select(a => Row(a.HelpName ?? a.Name, a.Description!, a.Arity.MinimumNumberOfValues > 0 ? "required" : "")),
            .. command.Options.Where(o => !o.Hidden && o is not System.CommandLine.Help.HelpOption).Select(Row), "",
            "```", .. ((ExampleCommand)command).Examples, "```",
        ];
        return string.Join('\n', lines);
    }

    private static string Row(Option option)
    {
        // Where an option has no value of its own unless given, its description ends with what holds then, in brackets.
        string meaning = option.Description!;
        int bracket = meaning.EndsWith(']') ? meaning.LastIndexOf('[') : -1;
        string otherwise = option.Required ? "required"
            : bracket >= 0 ? meaning[(bracket + 1)..^1]
            : option.HasDefaultValue && option.GetDefaultValue() is string value ? value : "";
        string name = option.HelpName is { } help ? $"{option.Name} {help}" : option.Name;
        return Row(name, bracket >= 0 ? meaning[..bracket].TrimEnd() : meaning, otherwise);
    }

    private static string Row(string name, string meaning, string otherwise)
        => $"| `{Cell(name)}` | {Cell(meaning)} |{(otherwise.Length == 0 ? " " : $" {Cell(otherwise)} ")}|";

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
