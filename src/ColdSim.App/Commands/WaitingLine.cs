namespace ColdSim.App.Commands;

/// <summary>A sign of life on standard error, if a person looks at it and the work takes over a second.</summary>
internal static class WaitingLine
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    /// <summary>Comes back when the work is over, however it ended.</summary>
    public static async Task UntilAsync(Task work, Host host)
    {
        if (!host.ErrorIsTerminal)
            return;
        int seconds = 0;
        while (await Task.WhenAny(work, Task.Delay(Second, host.Clock)).ConfigureAwait(false) != work)
        {
            seconds++;
            host.Error.Write(FormattableString.Invariant($"\rrunning for {seconds} s"));
            host.Error.Flush();
        }

        if (seconds > 0)
            host.Error.Write("\r                   \r");
    }
}
