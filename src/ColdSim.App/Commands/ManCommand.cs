using System.CommandLine;
using ColdSim.App.Shells;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim man</c>: the manual page.</summary>
internal static class ManCommand
{
    private static readonly (string, string)[] Files =
    [
        ("~/.config/coldsim/rig.toml", "Your own rig, which 'coldsim new --mine' keeps."),
        ("~/.config/coldsim/settings.toml", "Your settings for 'coldsim forecast'."),
        ("~/.cache/coldsim", "Answers of the weather services, which can be fetched again."),
        ("NAME.log.csv", "Readings of the cylinders of NAME.toml, which 'coldsim log add' appends to."),
    ];

    private static readonly (string, string)[] Variables =
    [
        ("NO_COLOR", "Set to anything: no colour and no bold."),
        ("XDG_CONFIG_HOME, XDG_CACHE_HOME", "Folders in place of ~/.config and ~/.cache."),
    ];

    public static Command Of(Host host)
    {
        ExampleCommand command = new("man", "Print the manual page, for man to show.", "coldsim man | man -l -");
        command.SetAction(_ =>
        {
            host.Out.Write(ManualPage.Of(
                CommandTree.Of(host), ProgramVersion.Short, HelpWithExamples.ExamplesOf, HelpWithExamples.ExitCodes, Files, Variables));
            return ExitCode.Done;
        });
        return command;
    }
}
