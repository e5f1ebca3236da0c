using System.CommandLine;
using System.CommandLine.Completions;
using ColdSim.App.Shells;
using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim completions</c>: the script that teaches a shell to complete, and the answers to what it asks.</summary>
internal static class CompletionsCommand
{
    public static Command Of(Host host)
    {
        Argument<string> shell = new("SHELL")
        {
            Description = string.Join(", ", CompletionScript.Shells) + ".",
            CustomParser = r =>
            {
                string word = r.Tokens[0].Value;
                if (!CompletionScript.Shells.Contains(word, StringComparer.Ordinal))
                    r.AddError($"SHELL is {string.Join(", ", CompletionScript.Shells)}, not '{ColdSim.Files.Quote.Of(word)}'");
                return word;
            },
        };
        shell.CompletionSources.Add([.. CompletionScript.Shells]);
        ExampleCommand command = new(
            "completions",
            "Print the script by which a shell completes commands, options, their values and files.",
            "source <(coldsim completions bash)        in .bashrc; likewise zsh",
            "coldsim completions fish > ~/.config/fish/completions/coldsim.fish",
            "coldsim completions pwsh | Out-String | Invoke-Expression") { shell };
        command.SetAction(parsed =>
        {
            host.Out.Write(CompletionScript.Of(parsed.GetRequiredValue(shell)));
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary>
    /// Answers a script: a line for each word that may come next, its meaning after a tab, and a last one where that may be a file.
    /// </summary>
    /// <param name="words">The words typed so far; the last one is being typed, and may be empty.</param>
    /// <param name="host">Where the command runs.</param>
    public static int Answer(IReadOnlyList<string> words, Host host)
    {
        if (words.Count == 0)
            return ExitCode.Done;
        bool help = words.Count > 1 && words[0] == "help";
        IReadOnlyList<string> asked = help ? [.. words.Skip(1)] : words;
        RootCommand root = CommandTree.Of(host, asked.Count > 1 ? asked[0] : null);
        NextWord next = NextWord.Of(root.Parse([.. asked.Take(asked.Count - 1)], CommandTree.Parsing), asked);
        foreach (OfferedWord offered in next.Words)
            host.Out.WriteLine(offered.Meaning.Length == 0 ? offered.Word : $"{offered.Word}\t{offered.Meaning}");
        if (next.Files && !help)
            host.Out.WriteLine(CompletionScript.Files);
        return ExitCode.Done;
    }

    /// <summary>Offers the names of a scenario's options.</summary>
    /// <param name="file">The argument that names the scenario.</param>
    /// <param name="host">Where the command runs.</param>
    public static Func<CompletionContext, IEnumerable<CompletionItem>> OptionNames(Argument<string> file, Host host)
        => context => Read(context, file, host)?.Options.Select(o => new CompletionItem(o.Name)) ?? [];

    /// <summary>Offers the names of a scenario's cylinders.</summary>
    /// <param name="file">The argument that names the scenario.</param>
    /// <param name="host">Where the command runs.</param>
    public static Func<CompletionContext, IEnumerable<CompletionItem>> CylinderNames(Argument<string> file, Host host)
        => context => Read(context, file, host)?.Scenario is { } scenario
            ? LogCylinders.NamesOf(scenario.Rig).Select(n => new CompletionItem(n)) : [];

    private static ReadResult? Read(CompletionContext context, Argument<string> file, Host host)
        => context.ParseResult.GetResult(file)?.Tokens is [{ Value: { } path }, ..] && host.Files.Exists(path)
            ? ScenarioReader.Read(path, host.Files.Open) : null;
}
