namespace ColdSim.Files.Weather.Services;

/// <summary>Why no forecast was to be had, in words for the person who asked.</summary>
internal sealed class ForecastFaultException : Exception
{
    private ForecastFaultException(string message, bool isTemporary, bool mayRetry, Exception? inner)
        : base(message, inner)
    {
        IsTemporary = isTemporary;
        MayRetry = mayRetry;
    }

    /// <summary>Whether a kept answer may be used instead: the network or the service fails, and not the question.</summary>
    public bool IsTemporary { get; }

    /// <summary>Whether asking again at once may help.</summary>
    public bool MayRetry { get; }

    /// <summary>How long the service asks to wait; null where it does not say.</summary>
    public TimeSpan? RetryAfter { get; private init; }

    /// <summary>Nobody answered, or the answer broke off.</summary>
    public static ForecastFaultException NoAnswer(string message, Exception? inner = null)
        => new(message, isTemporary: true, mayRetry: true, inner);

    /// <summary>The service is busy or out of order.</summary>
    /// <param name="message">What it said.</param>
    /// <param name="retryAfter">How long it asks to wait.</param>
    /// <param name="longestWait">The longest wait that is worth it.</param>
    public static ForecastFaultException Busy(string message, TimeSpan? retryAfter, TimeSpan longestWait)
        => new(message, isTemporary: true, mayRetry: retryAfter is null || retryAfter <= longestWait, null) { RetryAfter = retryAfter };

    /// <summary>Somebody else than the service answered, such as a network that asks for a log-in.</summary>
    public static ForecastFaultException NotTheService(string message) => new(message, isTemporary: true, mayRetry: false, null);

    /// <summary>The service refuses the question.</summary>
    public static ForecastFaultException Refused(string message) => new(message, isTemporary: false, mayRetry: false, null);
}
