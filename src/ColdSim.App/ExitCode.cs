namespace ColdSim.App;

/// <summary>What the program says to the shell.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>Done, but some night is short, flat or dry, and that was asked to count as a failure.</summary>
    public const int ShortOrDry = 1;

    /// <summary>A file, a value or the command line is wrong.</summary>
    public const int BadInput = 2;

    /// <summary>The ledger does not close, or something else that is our fault.</summary>
    public const int Internal = 3;

    public const int Interrupted = 130;
}
