using System.CommandLine;
using System.CommandLine.Parsing;
using ColdSim.Files;
using ColdSim.Files.Quantities;

namespace ColdSim.App.Commands;

/// <summary>Says what is wrong with a command line and names what was probably meant.</summary>
internal static class UsageFault
{
    public static IReadOnlyList<string> Lines(ParseResult parsed, IFiles files)
    {
        Command command = parsed.CommandResult.Command;
        string path = Path(command);
        List<string> lines = [];
        if (SwallowedOption(parsed) is { } swallowed)
            lines.Add(Unknown(swallowed, parsed, files));
        foreach (string word in parsed.UnmatchedTokens.Where(_ => lines.Count == 0))
            lines.Add(Unknown(word, parsed, files));
        if (lines.Count == 0)
            lines.AddRange(parsed.Errors.Select(e => $"coldsim: {Plain(e)}"));
        lines.Add($"See '{path} --help'.");
        return lines;
    }

    /// <summary>An option that does not exist and was read as a value: "--jsn" for a file name. A number may be negative.</summary>
    public static string? SwallowedOption(ParseResult parsed)
    {
        foreach (Argument argument in parsed.CommandResult.Command.Arguments)
        {
            string? word = parsed.GetResult(argument)?.Tokens.Select(t => t.Value).FirstOrDefault(LooksLikeOption);
            if (word is not null)
                return word;
        }

        return parsed.CommandResult.Command.Options
            .SelectMany(o => parsed.GetResult(o)?.Tokens ?? [])
            .Select(t => t.Value)
            .FirstOrDefault(LooksLikeOption);
    }

    private static bool LooksLikeOption(string word)
        => word.Length > 1 && word[0] == '-' && (char.IsAsciiLetter(word[1]) || (word[1] == '-' && word.Length > 2));

    // A unit that the shell took for a word of its own, with the number before it.
    private static string? NumberBefore(string word, ParseResult parsed)
    {
        if (!SpellingTable.IsUnit(word))
            return null;
        for (int i = 1; i < parsed.Tokens.Count; i++)
        {
            string before = parsed.Tokens[i - 1].Value;
            if (parsed.Tokens[i].Value == word && NumberText.TryRead(before, out _, out string rest, out _) && rest.Length == 0)
                return $"{before} {word}";
        }

        return null;
    }

    private static string Unknown(string word, ParseResult parsed, IFiles files)
    {
        Command command = parsed.CommandResult.Command;
        bool option = word.StartsWith('-');
        string bare = word.Split('=')[0];
        IEnumerable<string> known = option
            ? command.Options.Where(o => !o.Hidden).SelectMany(o => o.Aliases.Prepend(o.Name)).Append("--help")
            : command.Subcommands.Select(c => c.Name);
        string what = option ? "option" : command.Subcommands.Count > 0 ? "command" : "argument";
        string line = $"coldsim: unknown {what} '{Quote.Of(bare)}'";
        if (!option && NumberBefore(word, parsed) is { } quantity)
            return $"{line}; a number and its unit go in one pair of quotes: \"{Quote.Of(quantity)}\"";
        if (NearestName.Of(bare, known) is { } nearest)
            return $"{line}; did you mean '{nearest}'?";
        return !option && command.Subcommands.Count > 0 && files.Exists(word)
            ? $"{line}; did you mean 'coldsim run {word}'?"
            : $"{line}; {(known.Any() ? $"there are {string.Join(", ", known)}" : "no more is accepted here")}";
    }

    private static string Plain(ParseError error)
    {
        string name = error.SymbolResult switch
        {
            ArgumentResult a => a.Argument.HelpName ?? a.Argument.Name,
            OptionResult o => o.Option.Name,
            _ => "",
        };
        return error.SymbolResult switch
        {
            ArgumentResult when error.SymbolResult.Tokens.Count == 0 => $"{name} is missing",
            OptionResult { Tokens.Count: 0, Implicit: true } => $"{name} is missing",
            OptionResult { Tokens.Count: 0 } => $"{name} needs a value",
            OptionResult { Tokens.Count: > 1 } => $"{name} is given more than once",
            _ => error.Message.ReplaceLineEndings(" "),
        };
    }

    private static string Path(Command command)
        => command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? $"{Path(parent)} {command.Name}" : "coldsim";
}
