namespace ColdSim.App.Commands;

/// <summary>What was taken for granted, on standard error, where standard output is one document for programs.</summary>
internal static class AssumedLines
{
    /// <summary>Tells it, and lets what was printed before out first.</summary>
    public static void Tell(Host host, IEnumerable<string> assumptions)
    {
        foreach (string assumption in assumptions)
            host.Error.WriteLine($"assumed: {assumption}");
        host.Out.Flush();
    }
}
