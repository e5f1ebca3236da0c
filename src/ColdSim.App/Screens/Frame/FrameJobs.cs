using System.Diagnostics;

namespace ColdSim.App.Screens.Frame;

/// <summary>Does on other threads what the frame says is being worked out, and stops what it no longer says.</summary>
/// <param name="tell">Told how each ended, from any thread.</param>
internal sealed class FrameJobs(Action<FrameMessage> tell) : IDisposable
{
    private readonly Dictionary<PageWork, Running> _running = [];

    public bool Any => _running.Count > 0;

    /// <summary>How far each is.</summary>
    public IReadOnlyList<FrameMessage.Counted> Counts
        => [.. _running.Select(r => new FrameMessage.Counted(r.Key, r.Value.Done, (int)r.Value.Watch.Elapsed.TotalSeconds))];

    /// <summary>Starts and stops until what runs is what should.</summary>
    public void Follow(IReadOnlyList<PageJob?> jobs)
    {
        foreach ((PageWork work, Running gone) in _running.Where(r => !jobs.Any(j => j?.Work == r.Key)).ToArray())
        {
            gone.Wanted = false;
            gone.Cancel.Cancel();
            _running.Remove(work);
        }

        foreach (PageJob job in jobs.OfType<PageJob>())
        {
            if (!_running.TryGetValue(job.Work, out Running? running))
                Start(job.Work);
            else if (job.Stopping)
                running.Cancel.Cancel();
        }
    }

    /// <summary>Asks all to stop; nobody waits for them.</summary>
    public void Dispose() => Follow([]);

    private void Start(PageWork work)
    {
        Running running = new();
        _running.Add(work, running);
        CancellationToken cancel = running.Cancel.Token;
        _ = Task.Run(() =>
        {
            PageMessage ended;
            try
            {
                ended = new PageMessage.Done(work.Run(running, cancel));
            }
            catch (OperationCanceledException) when (cancel.IsCancellationRequested)
            {
                ended = new PageMessage.Stopped();
            }
            catch (Exception e) when (e is not OutOfMemoryException)
            {
                ended = new PageMessage.Failed(e.Message);
            }

            if (running.Wanted)
                tell(new FrameMessage.Ended(work, ended));
        });
    }

    private sealed class Running : IProgress<int>
    {
        private int _done;
        private volatile bool _wanted = true;

        public CancellationTokenSource Cancel { get; } = new();

        /// <summary>Whether anybody waits for how it ends.</summary>
        public bool Wanted
        {
            get => _wanted;
            set => _wanted = value;
        }

        public Stopwatch Watch { get; } = Stopwatch.StartNew();

        public int Done => Volatile.Read(ref _done);

        // Parts are told from several threads, and a later count may come first.
        public void Report(int value) => Interlocked.Increment(ref _done);
    }
}
