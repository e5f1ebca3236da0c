using System.CommandLine;
using System.CommandLine.Completions;

namespace ColdSim.App.Shells;

/// <summary>A word that a shell may offer.</summary>
/// <param name="Word">The word.</param>
/// <param name="Meaning">What it means; empty where the word says it.</param>
internal sealed record OfferedWord(string Word, string Meaning);

/// <summary>What may come next in a command line that is being typed.</summary>
/// <param name="Words">Words that begin as the typed one does.</param>
/// <param name="Files">Whether the name of a file may stand there.</param>
internal sealed record NextWord(IReadOnlyList<OfferedWord> Words, bool Files)
{
    // How an option or an argument says that it takes the name of a file.
    private static readonly string[] FileNames = ["FILE", "SECOND", "PATH", "FOLDER", "REPORT", "RECORD", "OBSERVED"];

    /// <summary>Finds it.</summary>
    /// <param name="before">The words before the one that is being typed, parsed.</param>
    /// <param name="words">The same words, and the typed one last; it may be empty, or begin with a quotation mark.</param>
    public static NextWord Of(ParseResult before, IReadOnlyList<string> words)
    {
        Command command = before.CommandResult.Command;
        string typed = words[^1].TrimStart('"', '\'');
        if (ValueOf(command, words) is { } option)
            return Values(option.CompletionSources, before, option.HelpName, typed, "");
        if (typed.StartsWith("--", StringComparison.Ordinal) && typed.IndexOf('=', StringComparison.Ordinal) is > 0 and int equals)
        {
            return Named(command, typed[..equals]) is { } named && TakesValue(named)
                ? Values(named.CompletionSources, before, named.HelpName, typed[(equals + 1)..], typed[..(equals + 1)])
                : new([], false);
        }

        if (command.Subcommands.Count > 0 && before.UnmatchedTokens.Count > 0)
            return new([], false);
        if (typed.StartsWith('-'))
            return new([.. Options(command, before).Where(o => o.Word.StartsWith(typed, StringComparison.Ordinal))], false);
        if (command.Subcommands.Any(c => !c.Hidden))
            return new([.. Commands(command).Where(c => c.Word.StartsWith(typed, StringComparison.Ordinal))], false);
        return Argument(command, before) is { } argument
            ? Values(argument.CompletionSources, before, argument.HelpName ?? argument.Name, typed, "")
            : new([.. Options(command, before).Where(_ => typed.Length == 0)], false);
    }

    // The option whose value is typed. Some shells part "--units=si" into three words.
    private static Option? ValueOf(Command command, IReadOnlyList<string> words)
    {
        int last = words.Count - 2;
        if (last > 0 && words[last] == "=")
            last--;
        return last >= 0 && Named(command, words[last]) is { } option && TakesValue(option) ? option : null;
    }

    private static Option? Named(Command command, string word)
        => command.Options.FirstOrDefault(o => o.Name == word || o.Aliases.Contains(word));

    private static bool TakesValue(Option option) => option.ValueType != typeof(bool) && option.Arity.MaximumNumberOfValues > 0;

    private static bool IsRepeatable(Option option) => option.Arity.MaximumNumberOfValues > 1;

    // The argument whose turn it is; the last one where it takes several.
    private static Argument? Argument(Command command, ParseResult before)
    {
        int given = command.Arguments.Sum(a => before.GetResult(a)?.Tokens.Count ?? 0);
        foreach (Argument argument in command.Arguments)
        {
            if (given < argument.Arity.MaximumNumberOfValues)
                return argument;
            given -= argument.Arity.MaximumNumberOfValues;
        }

        return null;
    }

    private static IEnumerable<OfferedWord> Options(Command command, ParseResult before) => command.Options
        .Where(o => !o.Hidden && (IsRepeatable(o) || before.GetResult(o) is null or { Implicit: true }))
        .Select(o => new OfferedWord(o.Name, Brief(o.Description)))
        .OrderBy(o => o.Word, StringComparer.Ordinal);

    private static IEnumerable<OfferedWord> Commands(Command command)
        => command.Subcommands.Where(c => !c.Hidden).Select(c => new OfferedWord(c.Name, Brief(c.Description)));

    // Of a list with commas the part after the last one is completed.
    private static NextWord Values(
        IEnumerable<Func<CompletionContext, IEnumerable<CompletionItem>>> sources, ParseResult before, string? name, string typed,
        string kept)
    {
        IReadOnlyList<string> known = [.. sources.SelectMany(s => s(before.GetCompletionContext())).Select(i => i.Label)];
        if (known.Count == 0 && name is not null)
            known = Listed(name);
        int comma = typed.LastIndexOf(',') + 1;
        string list = kept + typed[..comma], part = typed[comma..];
        return new(
            [.. known.Where(k => k.StartsWith(part, StringComparison.OrdinalIgnoreCase)).Select(k => new OfferedWord(list + k, ""))],
            FileNames.Contains(name, StringComparer.Ordinal));
    }

    // The words of "us|si"; what is in capitals stands for any value.
    private static IReadOnlyList<string> Listed(string name)
        => name.Contains('|', StringComparison.Ordinal) ? [.. name.Split('|').Where(w => !w.Any(char.IsAsciiLetterUpper))] : [];

    // The first sentence, in one line.
    private static string Brief(string? description)
    {
        string line = (description ?? "").ReplaceLineEndings(" ").Replace('\t', ' ');
        int end = line.IndexOfAny([';', ':']) is >= 0 and int mark ? mark : line.Length;
        int stop = line.IndexOf(". ", StringComparison.Ordinal);
        return (stop >= 0 && stop < end ? line[..stop] : line[..end]).TrimEnd('.');
    }
}
