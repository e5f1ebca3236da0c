using System.Runtime.InteropServices;

namespace ColdSim.App.Screens.Loop;

/// <summary>Waits in the kernel until the terminal has input.</summary>
internal static class InputWait
{
    private const int StandardInput = 0;
    private const short Readable = 1;

    [StructLayout(LayoutKind.Sequential)]
    private struct PollFd
    {
        public int Descriptor;
        public short Events;
        public short Happened;
    }

    /// <summary>Waits until there is input, or a time is over.</summary>
    /// <param name="milliseconds">The longest wait.</param>
    /// <returns>Whether there is input to read; false too where the terminal is gone.</returns>
    public static bool Until(int milliseconds)
    {
        PollFd[] polled = [new PollFd { Descriptor = StandardInput, Events = Readable }];
        if (Poll(polled, 1, milliseconds) <= 0)
            return false;
        if ((polled[0].Happened & Readable) != 0)
            return true;

        // A terminal that has gone away answers at once, again and again.
        _ = Poll([], 0, milliseconds);
        return false;
    }

    [DllImport("libc", EntryPoint = "poll", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Poll([In, Out] PollFd[] polled, nuint count, int milliseconds);
}
