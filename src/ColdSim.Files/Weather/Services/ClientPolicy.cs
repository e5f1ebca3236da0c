namespace ColdSim.Files.Weather.Services;

/// <summary>How patient the client is.</summary>
/// <remarks>Numbers only, so that a command that fetches nothing loads no library of the network.</remarks>
internal sealed record ClientPolicy
{
    /// <summary>How long one attempt may take.</summary>
    public TimeSpan AttemptTimeout { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>How often it is asked in all.</summary>
    public int Attempts { get; init; } = 3;

    /// <summary>The wait before the second attempt; it doubles with each further one.</summary>
    public TimeSpan FirstDelay { get; init; } = TimeSpan.FromSeconds(1);

    /// <summary>The longest wait that a service may ask for before the attempt is given up.</summary>
    public TimeSpan LongestWait { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>How long an answer counts as the newest where the service does not say.</summary>
    public TimeSpan FreshUnlessTold { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>The largest answer in bytes; the longest forecast of the three services is below a tenth of it.</summary>
    public int LargestAnswer { get; init; } = 8 << 20;

    /// <summary>How often an answer may send on to another address of the same server.</summary>
    public int Redirects { get; init; } = 3;
}
