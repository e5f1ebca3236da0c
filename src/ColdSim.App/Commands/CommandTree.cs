using System.CommandLine;
using System.CommandLine.Help;

namespace ColdSim.App.Commands;

/// <summary>The dispatch table: every command of the program, in the order of the help.</summary>
internal static class CommandTree
{
    private static readonly (string Name, Func<Host, Command> Make)[] Commands =
    [
        ("run", RunCommand.Of),
        ("tonight", TonightCommand.Of),
        ("compare", CompareCommand.Of),
        ("trip", TripCommand.Of),
        ("limits", LimitsCommand.Of),
        ("buy", BuyCommand.Of),
        ("freeze", FreezeCommand.Of),
        ("explain", ExplainCommand.Of),
        ("report", ReportCommand.Of),
        ("diagnose", DiagnoseCommand.Of),
        ("check", CheckCommand.Of),
        ("new", NewCommand.Of),
        ("propane", PropaneCommand.Of),
        ("capacity", CapacityCommand.Of),
        ("gauge", GaugeCommand.Of),
        ("weather", WeatherCommand.Of),
        ("forecast", ForecastCommand.Of),
        ("log", LogCommand.Of),
        ("fit", FitCommand.Of),
        ("view", ViewCommand.Of),
        ("schema", SchemaCommand.Of),
        ("completions", CompletionsCommand.Of),
        ("man", ManCommand.Of),
    ];

    /// <summary>How a command line is read.</summary>
    public static ParserConfiguration Parsing => new() { EnablePosixBundling = false, ResponseFileTokenReplacer = null };

    /// <summary>The program's commands.</summary>
    /// <param name="host">Where they run.</param>
    /// <param name="asked">The first word of a command line: where it names a command, only that one is made, because the rest takes time at every start.</param>
    public static RootCommand Of(Host host, string? asked = null)
    {
        RootCommand root = new(
            "Says whether a propane cylinder carries a coach's furnace through cold nights: when it runs short with gas "
            + "still in it, when it runs dry, and how cold it gets inside. Without a command, opens the screen on your own rig (coldsim new --mine), or on a demo.");
        bool one = IsCommand(asked);
        foreach ((string name, Func<Host, Command> make) in Commands)
        {
            if (!one || name == asked)
                root.Add(make(host));
        }

        root.HelpName = "coldsim";
        ViewCommand.OpenFrom(root, host);
        for (int i = root.Options.Count - 1; i >= 0; i--)
        {
            if (root.Options[i] is HelpOption help)
                help.Action = new HelpWithExamples();
            else if (root.Options[i] is VersionOption)
                root.Options.RemoveAt(i);
        }

        ProgramVersion.AddTo(root, host);

        return root;
    }

    private static bool IsCommand(string? word)
    {
        foreach ((string name, _) in Commands)
        {
            if (name == word)
                return true;
        }

        return false;
    }
}
