using ColdSim.Model.Engine;

namespace ColdSim.App.Screens.Pages;

/// <summary>Work that a page needs done on another thread. Two jobs are the same only if they are one object.</summary>
/// <param name="description">What is done, such as "comparing 9 options".</param>
/// <param name="run">Does it: reports every step that is done, stops on cancellation, and returns the result.</param>
internal sealed class PageJob(string description, Func<IProgress<int>, CancellationToken, object> run)
{
    /// <summary>Why a page shows nothing of a run whose sums do not close.</summary>
    public const string OpenLedger = "the ledger of a run does not close, so nothing of it is shown; please report it with the scenario and its weather file.";

    public string Description => description;

    /// <summary>What its steps are called, in the plural.</summary>
    public string StepName { get; init; } = "runs";

    /// <summary>How many steps there are; null where that is not known.</summary>
    public int? StepCount { get; init; }

    /// <summary>Whether the page is still shown while the job runs.</summary>
    public bool KeepsPageVisible { get; init; }

    /// <summary>Whether it starts by itself beside what is shown, so that Esc does not stop it.</summary>
    public bool IsUnasked { get; init; }

    /// <summary>Whether a cancelled job returns what is done by then; the page then receives that result and no cancellation.</summary>
    public bool ReturnsPartial { get; init; }

    public object Run(IProgress<int> finished, CancellationToken cancel) => run(finished, cancel);

    /// <summary>A result of runs whose ledgers all close; of others nothing may be shown.</summary>
    /// <exception cref="InvalidOperationException">A ledger is open.</exception>
    public static T IfClosed<T>(T result, params IEnumerable<LedgerBalance> ledgers)
        => ledgers.All(l => l.Closes) ? result : throw new InvalidOperationException(OpenLedger);
}

/// <summary>A result of a job that changed the scenario's files: all pages are read and run again from them.</summary>
internal interface IFilesChanged;

/// <summary>A job that runs.</summary>
/// <param name="Job">The job.</param>
/// <param name="Done">Steps that are done.</param>
/// <param name="Seconds">How long it has run.</param>
/// <param name="Stopping">Whether it was asked to end with what is done.</param>
internal sealed record RunningJob(PageJob Job, int Done = 0, int Seconds = 0, bool Stopping = false)
{
    /// <summary>Such as "3 of 9 runs done, 4 s".</summary>
    public string Progress => $"{Done}{(Job.StepCount is { } of ? $" of {of}" : "")} {Job.StepName} done, {Seconds} s{(Stopping ? ", stopping" : "")}";
}

/// <summary>A result that a job brings, or why there is none.</summary>
/// <typeparam name="T">The result's type.</typeparam>
/// <param name="Job">The job; null where nothing has to be worked out.</param>
internal sealed record Pending<T>(PageJob? Job)
    where T : class
{
    public T? Value { get; init; }

    public bool IsCancelled { get; init; }

    /// <summary>Why the job failed; empty where it did not.</summary>
    public string Failure { get; init; } = "";

    /// <summary>The job, until it has ended in one way or another.</summary>
    public PageJob? DueJob => Value is null && !IsCancelled && Failure.Length == 0 ? Job : null;

    /// <summary>What is shown instead of a result.</summary>
    public string Status => Failure.Length > 0 ? $"It could not be worked out: {Failure}" : IsCancelled ? "Stopped before it was done; Enter starts it again." : "";

    public Pending<T> Update(PageMessage message) => message switch
    {
        PageMessage.Completed { Result: T value } => this with { Value = value },
        PageMessage.Failed failed => this with { Failure = failed.Reason },
        PageMessage.Cancelled => this with { IsCancelled = Value is null },
        PageMessage.Choose when Value is null => this with { IsCancelled = false, Failure = "" },
        _ => this,
    };
}
