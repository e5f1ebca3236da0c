namespace ColdSim.App.Screens.Frame;

/// <summary>Something a page wants worked out on another thread. Two are the same only if they are one object.</summary>
/// <param name="what">What is done, such as "comparing 9 options".</param>
/// <param name="run">Does it: tells of every part that is done, stops when asked to, and gives what the page is told.</param>
internal sealed class PageWork(string what, Func<IProgress<int>, CancellationToken, object> run)
{
    public string What => what;

    /// <summary>What the parts are called.</summary>
    public string Parts { get; init; } = "runs";

    /// <summary>How many there are; null where that is not known.</summary>
    public int? Of { get; init; }

    /// <summary>Whether the page stays to be seen meanwhile.</summary>
    public bool InPlace { get; init; }

    /// <summary>Whether a stop gives what is done by then; the page hears how it ended and not that it was stopped.</summary>
    public bool GivesPart { get; init; }

    public object Run(IProgress<int> finished, CancellationToken cancel) => run(finished, cancel);
}

/// <summary>Work that is being done.</summary>
/// <param name="Work">Which.</param>
/// <param name="Done">Parts that are done.</param>
/// <param name="Seconds">For so long.</param>
/// <param name="Stopping">Whether it is to end with what is done.</param>
internal sealed record PageJob(PageWork Work, int Done = 0, int Seconds = 0, bool Stopping = false)
{
    /// <summary>Such as "3 of 9 runs done, 4 s".</summary>
    public string Progress => $"{Done}{(Work.Of is { } of ? $" of {of}" : "")} {Work.Parts} done, {Seconds} s{(Stopping ? ", stopping" : "")}";
}
