using System.Diagnostics;

namespace ColdSim.Tests.Files.Disk;

/// <summary>The real program in a process of its own, started by a shell that gives it streams and limits.</summary>
internal static class Real
{
    /// <summary>The words that start it.</summary>
    public static string Program { get; } = $"dotnet {Path.Combine(AppContext.BaseDirectory, "coldsim.dll")}";

    /// <summary>Runs a line of the shell: its exit code and all that came out.</summary>
    public static (int Code, string Output) Shell(string line)
    {
        ProcessStartInfo start = new("bash") { RedirectStandardOutput = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(line);

        // Memory that the runtime maps twice is a file, to which a limit on the size of files applies.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }
}
