namespace ColdSim.App.Screens.Frame;

/// <summary>What a page has worked out, or why it has not.</summary>
/// <typeparam name="T">What it is.</typeparam>
/// <param name="Work">How it is worked out; null where there is nothing to work out.</param>
internal sealed record Figures<T>(PageWork? Work)
    where T : class
{
    public T? Value { get; init; }

    /// <summary>Whether somebody did not want to wait.</summary>
    public bool Stopped { get; init; }

    /// <summary>Why it cannot be worked out; empty while that is not known.</summary>
    public string Failed { get; init; } = "";

    public PageWork? Wanted => Value is null && !Stopped && Failed.Length == 0 ? Work : null;

    /// <summary>What to say while there is nothing to show.</summary>
    public string Say => Failed.Length > 0 ? $"It could not be worked out: {Failed}" : Stopped ? "Stopped before it was done; Enter starts it again." : "";

    public Figures<T> After(PageMessage message) => message switch
    {
        PageMessage.Done { Figures: T value } => this with { Value = value },
        PageMessage.Failed failed => this with { Failed = failed.Why },
        PageMessage.Stopped => this with { Stopped = Value is null },
        PageMessage.Choose when Value is null => this with { Stopped = false, Failed = "" },
        _ => this,
    };
}
