using System.CommandLine;
using System.CommandLine.Help;

namespace ColdSim.App.Commands;

/// <summary>The dispatch table: every command of the program, in the order of the help.</summary>
internal static class CommandTree
{
    public static RootCommand Of(Host host)
    {
        RootCommand root = new(
            "Tells whether a propane cylinder carries a coach's furnace through cold nights: when it runs short with gas "
            + "still in it, when it runs dry, and how cold it gets inside. Without a command, opens the screen on the demo.")
        {
            RunCommand.Of(host),
            TonightCommand.Of(host),
            CompareCommand.Of(host),
            TripCommand.Of(host),
            LimitsCommand.Of(host),
            FreezeCommand.Of(host),
            ExplainCommand.Of(host),
            CheckCommand.Of(host),
            NewCommand.Of(host),
            PropaneCommand.Of(host),
            GaugeCommand.Of(host),
            WeatherCommand.Of(host),
            LogCommand.Of(host),
            FitCommand.Of(host),
            ViewCommand.Of(host),
        };
        root.HelpName = "coldsim";
        ViewCommand.OpenDemoFrom(root, host);
        foreach (Option option in root.Options)
        {
            if (option is HelpOption)
                option.Action = new HelpWithExamples();
        }

        return root;
    }
}
