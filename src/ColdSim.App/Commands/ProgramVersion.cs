using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;
using System.Runtime.InteropServices;

namespace ColdSim.App.Commands;

/// <summary>The program's version, as <c>coldsim --version</c> prints it.</summary>
internal static class ProgramVersion
{
    /// <summary>The version alone.</summary>
    public static string Short
        => typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    /// <summary>The version, the commit that it was published from, and what it runs on.</summary>
    public static IReadOnlyList<string> Full =>
    [
        $"coldsim {Short}",
        $"commit {Commit ?? "not recorded: built in its folder, not published"}",
        $"{RuntimeInformation.RuntimeIdentifier}, {RuntimeInformation.FrameworkDescription}",
    ];

    private static string? Commit
    {
        get
        {
            foreach (AssemblyMetadataAttribute about in typeof(ProgramVersion).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>())
            {
                if (about.Key == "Commit")
                    return about.Value;
            }

            return null;
        }
    }

    /// <summary>Gives the program <c>--version</c> and, with it, <c>--full</c>.</summary>
    public static void AddTo(RootCommand root, Host host)
    {
        Option<bool> full = new("--full") { Hidden = true };
        Option<bool> version = new("--version") { Description = "Print the version; with --full also the commit and the platform." };
        version.Action = new Print(full, host);
        root.Add(version);
        root.Add(full);
    }

    private sealed class Print(Option<bool> full, Host host) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            foreach (string line in parseResult.GetValue(full) ? Full : [Short])
                host.Out.WriteLine(line);
            return ExitCode.Done;
        }
    }
}
