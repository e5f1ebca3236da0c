using System.Diagnostics;
using Xunit;

namespace ColdSim.Tests.App.Shells;

/// <summary>A test that needs a program of this machine; where that is missing, it is skipped with a word.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class FactWithAttribute : FactAttribute
{
    public FactWithAttribute(string program)
    {
        if (!RealShell.IsThere(program))
            Skip = $"{program} is not installed here; .ci/run installs it";
    }
}

/// <summary>Runs lines in a real shell, with the program of this build as <c>coldsim</c>.</summary>
internal static class RealShell
{
    private const int LongestWait_ms = 60_000;

    public static bool IsThere(string program) => PathOf(program) is not null;

    /// <summary>What a program prints when it is given these lines on its standard input.</summary>
    public static string Said(string program, IEnumerable<string> arguments, string input, string? folder = null)
    {
        ProcessStartInfo start = new(PathOf(program)!, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder ?? Path.GetTempPath(),
        };
        start.Environment["PATH"] = AppContext.BaseDirectory + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH");
        start.Environment["TERM"] = "dumb";
        start.Environment["HOME"] = folder ?? Path.GetTempPath();
        using Process shell = Process.Start(start)!;
        Task<string> error = shell.StandardError.ReadToEndAsync();
        shell.StandardInput.Write(input);
        shell.StandardInput.Close();
        string said = shell.StandardOutput.ReadToEnd();
        Assert.True(shell.WaitForExit(LongestWait_ms), $"{program} does not end");
        return said + error.GetAwaiter().GetResult();
    }

    private static string? PathOf(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, program)).FirstOrDefault(File.Exists);
}
