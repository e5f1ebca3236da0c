using System.ComponentModel;
using System.Diagnostics;

namespace ColdSim.App.Screens.Frame;

/// <summary>The person's own editor, on the terminal that the screen has given back.</summary>
internal static class PersonsEditor
{
    /// <summary>The editor's command, as <c>VISUAL</c> or <c>EDITOR</c> gives it; null where neither does.</summary>
    public static string? Command => Named("VISUAL") ?? Named("EDITOR");

    /// <summary>Opens a file and waits until the editor has ended.</summary>
    /// <returns>Why the file was not edited; null where the editor ran.</returns>
    public static string? Edit(string path)
    {
        if (Command is not { } command)
            return "No editor is named: set VISUAL or EDITOR, such as EDITOR=nano.";

        // The variable may hold options, which a shell takes apart; the file's name is no part of what it reads.
        ProcessStartInfo start = OperatingSystem.IsWindows() ? new(command, [path]) : new("/bin/sh", ["-c", command + " \"$1\"", "sh", path]);
        start.UseShellExecute = false;
        try
        {
            using Process? editor = Process.Start(start);
            editor?.WaitForExit();
            return editor?.ExitCode is 126 or 127 ? $"'{command}' cannot be run as an editor." : null;
        }
        catch (Win32Exception e)
        {
            return $"'{command}' cannot be run as an editor: {e.Message}.";
        }
    }

    private static string? Named(string variable) => Environment.GetEnvironmentVariable(variable) is { Length: > 0 } command ? command : null;
}
