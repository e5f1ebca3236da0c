using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using ColdSim.App.Text;

namespace ColdSim.App.Commands;

/// <summary>A command that shows how it is used.</summary>
internal sealed class ExampleCommand(string name, string description, params IReadOnlyList<string> examples) : Command(name, description)
{
    public IReadOnlyList<string> Examples { get; } = examples;
}

/// <summary>The usual help, then examples and exit codes.</summary>
internal sealed class HelpWithExamples : SynchronousCommandLineAction
{
    private const int ExitCodesInFirstLine = 3;

    private static readonly string[] RootExamples =
    [
        "coldsim                                   the screen, on your rig or a demo",
        "coldsim tonight --low \"-8 °F\" --cylinder \"20 lb\" --left 1/3 \\",
        "    --furnace \"25000 BTU/h\"               tonight, without a file",
        "coldsim new trip.toml                     a scenario to fill in",
        "coldsim run trip.toml                     every night of it",
    ];

    /// <summary>What each exit code means.</summary>
    public static IReadOnlyList<(string Code, string Meaning)> ExitCodes { get; } =
    [
        ("0", "done"), ("1", "some night short, flat or dry, with --fail-if-short"), ("2", "wrong input"), ("3", "internal error"), ("130", "interrupted"),
    ];

    /// <summary>The examples of a command, or of the program.</summary>
    public static IReadOnlyList<string> ExamplesOf(Command command) => command is ExampleCommand c ? c.Examples : RootExamples;

    private readonly HelpAction _usual = new() { MaxWidth = Wrap.Columns };

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        TextWriter to = parseResult.InvocationConfiguration.Output;
        using StringWriter usual = new();
        parseResult.InvocationConfiguration.Output = usual;
        _usual.Invoke(parseResult);
        parseResult.InvocationConfiguration.Output = to;
        foreach (string line in usual.ToString().TrimEnd().Split('\n'))
            to.WriteLine(line.TrimEnd());
        to.WriteLine();
        to.WriteLine("Examples:");
        foreach (string example in ExamplesOf(parseResult.CommandResult.Command))
            to.WriteLine($"  {example}");
        to.WriteLine();
        to.WriteLine("Exit codes:");
        to.WriteLine($"  {string.Join("   ", ExitCodes.Take(ExitCodesInFirstLine).Select(e => $"{e.Code} {e.Meaning}"))}");
        to.WriteLine($"  {string.Join("   ", ExitCodes.Skip(ExitCodesInFirstLine).Select(e => $"{e.Code} {e.Meaning}"))}");
        return ExitCode.Done;
    }
}
