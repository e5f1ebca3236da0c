using System.CommandLine;
using System.Text;

namespace ColdSim.App.Shells;

/// <summary>The manual page, in the language of <c>man</c>, from the same commands, options and examples as <c>--help</c>.</summary>
internal sealed class ManualPage
{
    private const int LineLength = 78;
    private readonly StringBuilder _page = new();
    private readonly Func<Command, IReadOnlyList<string>> _examples;

    private ManualPage(Func<Command, IReadOnlyList<string>> examples) => _examples = examples;

    /// <summary>Writes it.</summary>
    /// <param name="root">The program with all its commands.</param>
    /// <param name="version">The program's version.</param>
    /// <param name="examples">The examples of the program and of each command.</param>
    /// <param name="exitCodes">What each exit code means.</param>
    /// <param name="files">Files that the program looks for, and what each is.</param>
    /// <param name="variables">Variables of the environment that it looks at, and what each does.</param>
    public static string Of(
        RootCommand root, string version, Func<Command, IReadOnlyList<string>> examples,
        IReadOnlyList<(string Code, string Meaning)> exitCodes,
        IReadOnlyList<(string Name, string Meaning)> files, IReadOnlyList<(string Name, string Meaning)> variables)
    {
        ManualPage page = new(examples);
        page.Request($".TH COLDSIM 1 \"\" \"coldsim {Escaped(version)}\" \"User Commands\"");
        page.Heading("NAME");
        page.Text("coldsim - says whether a propane cylinder carries a coach's furnace through cold nights");
        page.Heading("SYNOPSIS");
        page.Request(".B coldsim");
        page.Request(".br");
        page.Request(".B coldsim");
        page.Text("COMMAND [OPTION]... [FILE]");
        page.Heading("DESCRIPTION");
        page.Text(root.Description ?? "");
        page.Paragraph("Estimates only. The code in force, the makers' plates and a licensed technician decide.");
        page.Heading("OPTIONS");
        page.Options(root);
        page.Heading("EXAMPLES");
        page.Example(examples(root));
        page.Heading("COMMANDS");
        foreach (Command command in root.Subcommands.Where(c => !c.Hidden))
            page.Describe(command, "coldsim");
        page.Heading("EXIT STATUS");
        page.Tagged(exitCodes);
        page.Heading("FILES");
        page.Tagged(files);
        page.Heading("ENVIRONMENT");
        page.Tagged(variables);
        return page._page.ToString();
    }

    private void Describe(Command command, string of)
    {
        string name = $"{of} {command.Name}";
        Request($".SS {Escaped(Usage(command, name))}");
        Text(command.Description ?? "");
        foreach (Argument argument in command.Arguments)
            Tagged(argument.HelpName ?? argument.Name, argument.Description ?? "");
        Options(command);
        if (command.Subcommands.Count == 0 && _examples(command) is { Count: > 0 } examples)
        {
            Request(".PP");
            Example(examples);
        }

        foreach (Command below in command.Subcommands.Where(c => !c.Hidden))
            Describe(below, name);
    }

    private static string Usage(Command command, string name)
    {
        IEnumerable<string> arguments = command.Arguments.Select(a =>
        {
            string shown = (a.HelpName ?? a.Name) + (a.Arity.MaximumNumberOfValues > 1 ? "..." : "");
            return a.Arity.MinimumNumberOfValues == 0 ? $"[{shown}]" : shown;
        });
        return string.Join(' ', [name, .. arguments, .. command.Subcommands.Any(c => !c.Hidden) ? ["COMMAND"] : Array.Empty<string>()]);
    }

    private void Options(Command command)
    {
        foreach (Option option in command.Options.Where(o => !o.Hidden))
        {
            IEnumerable<string> names = option.Aliases.Where(a => a.StartsWith('-')).Order(StringComparer.Ordinal).Prepend(option.Name);
            string value = option.ValueType == typeof(bool) || option.HelpName is null ? "" : $" {option.HelpName}";
            Tagged(string.Join(", ", names) + value, option.Description + UnlessGiven(option));
        }
    }

    private static string UnlessGiven(Option option)
        => option.HasDefaultValue && option.ValueType == typeof(string) && option.GetDefaultValue() is string text ? $" [default: {text}]" : "";

    private void Heading(string name) => Request($".SH {name}");

    private void Tagged(IEnumerable<(string Name, string Meaning)> items)
    {
        foreach ((string name, string meaning) in items)
            Tagged(name, meaning);
    }

    private void Tagged(string name, string meaning)
    {
        Request(".TP");
        Request($".B \"{Escaped(name).Replace("\"", "\\(dq", StringComparison.Ordinal)}\"");
        Text(meaning);
    }

    private void Paragraph(string text)
    {
        Request(".PP");
        Text(text);
    }

    private void Example(IReadOnlyList<string> lines)
    {
        Request(".EX");
        foreach (string line in lines)
            Line(Escaped(line));
        Request(".EE");
    }

    private void Text(string text)
    {
        StringBuilder line = new();
        foreach (string word in Escaped(text.ReplaceLineEndings(" ")).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > LineLength)
            {
                Line(line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        Line(line.ToString());
    }

    // A line of text must not begin as a request does.
    private void Line(string line) => Request(line.StartsWith('.') || line.StartsWith('\'') ? "\\&" + line : line);

    private void Request(string line) => _page.Append(line).Append('\n');

    private static string Escaped(string text) => text
        .Replace("\\", "\\e", StringComparison.Ordinal)
        .Replace("-", "\\-", StringComparison.Ordinal)
        .Replace("'", "\\(aq", StringComparison.Ordinal);
}
