using System.Diagnostics;
using ColdSim.App.Screens.Pages;
using ColdSim.Files.Disk;

namespace ColdSim.App.Screens.Frame;

/// <summary>Runs the frame's jobs on other threads, and cancels those that the frame no longer lists.</summary>
/// <param name="post">Receives a message when a job ends, from any thread.</param>
internal sealed class JobDispatcher(Action<FrameMessage> post) : IDisposable
{
    private readonly Dictionary<PageJob, Running> _running = [];

    public bool IsBusy => _running.Count > 0;

    /// <summary>How far each running job is.</summary>
    public IReadOnlyList<FrameMessage.JobProgressed> Progress
        => [.. _running.Select(r => new FrameMessage.JobProgressed(r.Key, r.Value.Done, (int)r.Value.Watch.Elapsed.TotalSeconds))];

    /// <summary>Starts and cancels until exactly these jobs run.</summary>
    public void Synchronize(IReadOnlyList<RunningJob?> jobs)
    {
        foreach ((PageJob job, Running gone) in _running.Where(r => !jobs.Any(j => j?.Job == r.Key)).ToArray())
        {
            gone.IsAwaited = false;
            gone.Cancel.Cancel();
            _running.Remove(job);
        }

        foreach (RunningJob listed in jobs.OfType<RunningJob>())
        {
            if (!_running.TryGetValue(listed.Job, out Running? running))
                Start(listed.Job);
            else if (listed.Stopping)
                running.Cancel.Cancel();
        }
    }

    /// <summary>Cancels all jobs and waits for none.</summary>
    public void Dispose() => Synchronize([]);

    private void Start(PageJob job)
    {
        Running running = new();
        _running.Add(job, running);
        CancellationToken cancel = running.Cancel.Token;
        _ = Task.Run(() =>
        {
            PageMessage ended;
            try
            {
                ended = new PageMessage.Completed(job.Run(running, cancel));
            }
            catch (OperationCanceledException) when (cancel.IsCancellationRequested)
            {
                ended = new PageMessage.Cancelled();
            }
            catch (Exception e) when (e is not OutOfMemoryException)
            {
                ended = new PageMessage.Failed(e is (IOException or UnauthorizedAccessException) and not FileFaultException ? FileFaultException.WhyNotRead(e) : e.Message);
            }

            if (running.IsAwaited)
                post(new FrameMessage.JobEnded(job, ended));
        });
    }

    private sealed class Running : IProgress<int>
    {
        private int _done;
        private volatile bool _isAwaited = true;

        public CancellationTokenSource Cancel { get; } = new();

        /// <summary>Whether the frame still lists the job.</summary>
        public bool IsAwaited
        {
            get => _isAwaited;
            set => _isAwaited = value;
        }

        public Stopwatch Watch { get; } = Stopwatch.StartNew();

        public int Done => Volatile.Read(ref _done);

        // Steps are reported from several threads, and a later count may come first.
        public void Report(int value) => Interlocked.Increment(ref _done);
    }
}
