using System.Runtime.InteropServices;

namespace ColdSim.App.Screens.Loop;

/// <summary>The terminal's mode while the screen is open, each key at once and none shown, kept against whoever sets another.</summary>
/// <remarks>
/// After a program was stopped and continued the toolkit sets this mode again, and the runtime, which knows nothing of it, the mode that it found at the start. On a
/// busy machine the runtime comes second, and keys would then wait for Enter.
/// </remarks>
internal sealed class TerminalMode
{
    // More than the structure has on any system.
    private const int Size = 256;
    private const int StandardInput = 0;
    private const int Now = 0;

    private readonly byte[] _wanted = new byte[Size];
    private readonly byte[] _there = new byte[Size];
    private readonly bool _isKnown;

    private TerminalMode() => _isKnown = Get(StandardInput, _wanted) == 0;

    /// <summary>The mode as it is now.</summary>
    public static TerminalMode Current() => new();

    /// <summary>Sets it again where another is set and the terminal is ours: a program in the background that did so would be stopped.</summary>
    public void Keep()
    {
        if (_isKnown && ForegroundGroup(StandardInput) == OwnGroup() && Get(StandardInput, _there) == 0 && !_there.AsSpan().SequenceEqual(_wanted))
            _ = Set(StandardInput, Now, _wanted);
    }

    [DllImport("libc", EntryPoint = "tcgetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Get(int descriptor, [In, Out] byte[] mode);

    [DllImport("libc", EntryPoint = "tcsetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Set(int descriptor, int when, [In] byte[] mode);

    [DllImport("libc", EntryPoint = "tcgetpgrp")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ForegroundGroup(int descriptor);

    [DllImport("libc", EntryPoint = "getpgrp")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int OwnGroup();
}
