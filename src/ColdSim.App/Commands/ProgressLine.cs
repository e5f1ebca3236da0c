namespace ColdSim.App.Commands;

/// <summary>How far a long run is, on standard error, if a person looks at it and it takes over a second.</summary>
internal sealed class ProgressLine(Host host) : IProgress<double>, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(200);
    private readonly Lock _lock = new();
    private readonly long _begin = host.Clock.GetTimestamp();
    private TimeSpan _next = Patience;
    private bool _shown;
    private bool _over;

    public void Report(double value)
    {
        if (!host.ErrorIsTerminal)
            return;
        lock (_lock)
        {
            TimeSpan elapsed = host.Clock.GetElapsedTime(_begin);
            if (_over || elapsed < _next)
                return;
            _next = elapsed + Between;
            _shown = true;
            host.Error.Write(FormattableString.Invariant($"\rrunning, {100 * Math.Clamp(value, 0, 1),3:0} %"));
            host.Error.Flush();
        }
    }

    /// <summary>Wipes the line and says nothing more.</summary>
    public void Dispose()
    {
        lock (_lock)
        {
            _over = true;
            if (_shown)
                host.Error.Write("\r              \r");
        }
    }
}
