using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace ColdSim.App.Screens.Loop;

/// <summary>The toolkit's loop, asleep until input, a due timer or a signal of the terminal wakes it.</summary>
/// <remarks>
/// The toolkit goes round its loop and looks for input on a clock. Here its loop stops at the beginning of each turn, where it raises an event, and its input
/// thread sleeps in the kernel. Windows keeps the toolkit's own way.
/// </remarks>
internal sealed class WaitingLoop : IDisposable
{
    // Turns between which the toolkit itself waits: only long enough to be no busy loop.
    private const ushort TurnsPerSecond = 1000;

    // An escape byte alone becomes a key once nothing has followed it for a while, and what the toolkit asked the terminal at the start is answered or given up.
    private static readonly TimeSpan Afterwards = TimeSpan.FromMilliseconds(60), Starting = TimeSpan.FromSeconds(2);

    // Nothing is due then; a wake that the toolkit swallowed is made good.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    private readonly AutoResetEvent _wake = new(false);
    private readonly WaitingInput? _input;
    private readonly SynchronizedOutput? _output;
    private bool _reportsMouse;
    private TerminalMode? _mode;
    private readonly PosixSignalRegistration[] _signals = [];
    private readonly long _started = Environment.TickCount64;
    private bool _again = true;

    /// <summary>Makes the application; it is not started.</summary>
    public WaitingLoop()
    {
        if (OperatingSystem.IsWindows())
        {
            Application = Terminal.Gui.App.Application.Create();
            return;
        }

        _input = new WaitingInput(Wake);
        Application = (IApplication)Create(new AnsiComponentFactory(_input, _output = new SynchronizedOutput()));
        Terminal.Gui.App.Application.MaximumIterationsPerSecond = TurnsPerSecond;
        _signals =
        [
            PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => Wake()),
            PosixSignalRegistration.Create(PosixSignal.SIGCONT, _ => Application.Invoke(Continue)),
        ];
        if (Application.TimedEvents is { } timers)
            timers.Added += (_, _) => Wake();
        Application.Iteration += (_, _) => Wait();
    }

    /// <summary>The toolkit's application.</summary>
    public IApplication Application { get; }

    /// <summary>Raised on the loop's thread after the program was stopped and continued, when what the terminal shows is not known.</summary>
    public event Action? Continued;

    /// <summary>Whether mouse buttons are reported. The toolkit asks for motion too when it starts and when it comes back, so this is set after both.</summary>
    public bool ReportsMouse
    {
        get => _reportsMouse;
        set => _output?.Write(MouseModes.Reports(_reportsMouse = value));
    }

    /// <summary>Starts the application.</summary>
    public IApplication Init()
    {
        IApplication app = Application.Init();
        if (_output is not null)
            _mode = TerminalMode.Current();
        _output?.Write(MouseModes.Begin);
        ReportsMouse = false;
        return app;
    }

    /// <summary>Puts text on the terminal's clipboard (OSC 52), where the terminal lets a program do so.</summary>
    public void Copy(string text) => _output?.Write($"\x1b]52;c;{Convert.ToBase64String(Encoding.UTF8.GetBytes(text))}\a");

    /// <inheritdoc/>
    public void Dispose()
    {
        _output?.Write(MouseModes.End);
        _input?.End();
        foreach (PosixSignalRegistration signal in _signals)
            signal.Dispose();
        Application.Dispose();
        _wake.Dispose();
    }

    private void Continue()
    {
        ReportsMouse = _reportsMouse;
        _output?.Forget();
        Continued?.Invoke();
    }

    private void Wake() => _wake.Set();

    // What other threads ask for is a timer that is due at once, and its adding wakes the loop.
    private void Wait()
    {
        _mode?.Keep();
        int milliseconds = (int)(_again || Environment.TickCount64 - _started < Starting.TotalMilliseconds ? Afterwards : Longest).TotalMilliseconds;
        if (Application.TimedEvents is TimedEvents timers && timers.CheckTimers(out int due))
            milliseconds = Math.Min(milliseconds, due + 1);
        _again = _wake.WaitOne(milliseconds);
    }

    // The toolkit takes an input of ours only where its application is made, which it leaves to its own code.
    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object Create(IComponentFactory factory);
}
