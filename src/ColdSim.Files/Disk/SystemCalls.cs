using System.Runtime.InteropServices;

namespace ColdSim.Files.Disk;

/// <summary>Calls of the operating system that the runtime has no method for; but for a look at the standard streams nothing here is called before a file is written or a log is opened.</summary>
internal static partial class SystemCalls
{
    /// <summary>The error number for a process that does not exist.</summary>
    public const int NoSuchProcess = 3;

    /// <summary>The size of what <see cref="Statx"/> fills in.</summary>
    public const int StatxSize = 256;

    /// <summary>Relative paths start at the current folder.</summary>
    public const int CurrentFolder = -100;

    /// <summary>Type, mode, owner, group and inode.</summary>
    public const uint BasicStatus = 0x7FF;

    /// <summary>The owner that leaves a file's owner as it is.</summary>
    public const uint SameOwner = uint.MaxValue;

    private const int FileSizeSignal = 25;
    private const nint Ignore = 1;
    private const int GetFlags = 1, CloseOnExec = 1;

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    public static partial int Statx(int folder, string path, int flags, uint mask, Span<byte> status);

    [LibraryImport("libc", EntryPoint = "kill", SetLastError = true)]
    public static partial int Kill(int process, int signal);

    [LibraryImport("libc", EntryPoint = "chown", StringMarshalling = StringMarshalling.Utf8)]
    public static partial int ChangeOwner(string path, uint owner, uint group);

    /// <summary>Whether a stream was handed to this process open. One that was closed may be a file of the runtime's own by now, which the runtime marks as not to be handed on.</summary>
    public static bool IsInherited(int stream)
    {
        if (OperatingSystem.IsWindows())
            return true;
        try
        {
            return (FileControl(stream, GetFlags) & CloseOnExec) == 0;
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException)
        {
            return true;
        }
    }

    /// <summary>Makes a write beyond the limit on a file's size fail like any other, instead of ending the process in the middle of a line.</summary>
    public static void IgnoreFileSizeSignal()
    {
        if (!OperatingSystem.IsLinux() && !OperatingSystem.IsMacOS())
            return;
        try
        {
            SetSignal(FileSizeSignal, Ignore);
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException)
        {
            // The limit then ends the process, as it does with any program.
        }
    }

    [LibraryImport("libc", EntryPoint = "fcntl")]
    private static partial int FileControl(int file, int command);

    [LibraryImport("libc", EntryPoint = "signal")]
    private static partial nint SetSignal(int signal, nint handler);
}
