using System.Diagnostics;

namespace ColdSim.Tests.Files.Disk;

/// <summary>What tests need of the system that the library has no method for.</summary>
internal static class Unix
{
    public static void MakePipe(string path)
    {
        using Process made = Process.Start("mkfifo", [path]);
        made.WaitForExit();
    }

    public static void HardLink(string there, string path)
    {
        using Process made = Process.Start("ln", [there, path]);
        made.WaitForExit();
    }

    /// <summary>The number of a process that has ended.</summary>
    public static int DeadProcess()
    {
        using Process done = Process.Start("true");
        done.WaitForExit();
        return done.Id;
    }
}
