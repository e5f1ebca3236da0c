using System.Diagnostics;
using System.Runtime.InteropServices;

namespace ColdSim.App.Screens.Frame;

/// <summary>Receives the signals that ask a program to end, and ends it by force where the screen no longer answers.</summary>
/// <remarks>
/// A terminal that has gone away (its window closed, its connection lost) leaves the toolkit reading from nothing: it stops, but
/// its reading never ends. There is then no terminal left to put in order, and the program must not stay behind.
/// </remarks>
internal sealed class SignalWatch : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1.5);

    private readonly PosixSignalRegistration[] _registrations;
    private readonly Action<int> _onSignal;
    private Timer? _force;

    // An orderly exit waits for the console to be put in order too, and may wait for ever.
    private Timer? _kill;

    /// <summary>Listens for SIGHUP, SIGINT and SIGTERM.</summary>
    /// <param name="onSignal">Receives the signal's number, on another thread.</param>
    public SignalWatch(Action<int> onSignal)
    {
        _onSignal = onSignal;
        _registrations = [Register(PosixSignal.SIGHUP, 1), Register(PosixSignal.SIGINT, 2), Register(PosixSignal.SIGTERM, 15)];
    }

    /// <summary>Whether an interrupt is left to the program that has the terminal just now.</summary>
    public bool LeavesInterrupts { get; set; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _force?.Dispose();
        _kill?.Dispose();
        foreach (PosixSignalRegistration registration in _registrations)
            registration.Dispose();
    }

    private PosixSignalRegistration Register(PosixSignal signal, int number)
        => PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = true;
            if (LeavesInterrupts && signal == PosixSignal.SIGINT)
                return;
            if (_force is null)
            {
                _force = new Timer(_ => Environment.Exit(ScreenProgram.EndedBySignal + number), null, Patience, Timeout.InfiniteTimeSpan);
                _kill = new Timer(_ => Process.GetCurrentProcess().Kill(), null, 2 * Patience, Timeout.InfiniteTimeSpan);
            }

            _onSignal(number);
        });
}
