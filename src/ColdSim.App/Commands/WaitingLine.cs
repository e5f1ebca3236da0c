namespace ColdSim.App.Commands;

/// <summary>A sign of life on standard error, if a person looks at it and the work takes over a second.</summary>
internal static class WaitingLine
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    /// <summary>Comes back when the work is over, however it ended.</summary>
    /// <param name="work">What is waited for.</param>
    /// <param name="host">Whose standard error it is.</param>
    /// <param name="more">What else there is to say each second, or null.</param>
    public static async Task UntilAsync(Task work, Host host, Func<string>? more = null)
    {
        if (!host.ErrorIsTerminal)
            return;
        int seconds = 0, width = 19;
        while (await Task.WhenAny(work, Task.Delay(Second, host.Clock)).ConfigureAwait(false) != work)
        {
            seconds++;
            string line = FormattableString.Invariant($"running for {seconds} s{more?.Invoke()}");
            width = Math.Max(width, line.Length);
            host.Error.Write('\r' + line);
            host.Error.Flush();
        }

        if (seconds > 0)
            host.Error.Write($"\r{new string(' ', width)}\r");
    }
}
