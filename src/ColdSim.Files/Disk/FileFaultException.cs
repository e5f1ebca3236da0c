namespace ColdSim.Files.Disk;

/// <summary>A file could not be read or written; the message is a sentence of ours that names the person's file.</summary>
internal sealed class FileFaultException : IOException
{
    private FileFaultException(string message, string why, Exception? inner)
        : base(message, inner) => Why = why;

    /// <summary>Why, without the file's name.</summary>
    public string Why { get; }

    /// <summary>The fault of a write that the system refused.</summary>
    public static FileFaultException NotWritten(string path, Exception e) => new($"'{Quote.OfPath(path)}' cannot be written: {WhyNotWritten(e)}", WhyNotWritten(e), e);

    /// <summary>The fault of a write that is not tried.</summary>
    public static FileFaultException NotWritten(string path, string why) => new($"'{Quote.OfPath(path)}' cannot be written: {why}", why, null);

    /// <summary>The fault of standard output.</summary>
    public static FileFaultException OutputNotWritten(Exception e)
    {
        string why = e is UnauthorizedAccessException ? "it is not open for writing" : WhyNotWritten(e);
        return new($"standard output cannot be written: {why}; the answer is not complete", why, e);
    }

    /// <summary>The fault of a file that cannot be opened or read.</summary>
    public static FileFaultException NotRead(string path, Exception e) => new($"'{Quote.OfPath(path)}' cannot be read: {WhyNotRead(e)}", WhyNotRead(e), e);

    /// <inheritdoc cref="NotRead(string, Exception)"/>
    public static FileFaultException NotRead(string path, string why) => new($"'{Quote.OfPath(path)}' cannot be read: {why}", why, null);

    /// <summary>A file that is not written to, in a sentence of its own.</summary>
    public static FileFaultException Refused(string sentence) => new(sentence, sentence, null);

    /// <summary>Whether an exception is a write's that the system refused. The runtime reports a file that grows too large as an argument out of range.</summary>
    public static bool IsOfWrite(Exception e) => e is IOException or UnauthorizedAccessException or ArgumentOutOfRangeException;

    /// <summary>Why a file could not be opened or read, in words.</summary>
    public static string WhyNotRead(Exception e) => e switch
    {
        FileFaultException fault => fault.Why,
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        UnauthorizedAccessException => "it may not be read",
        PathTooLongException => "its name is too long",
        ArgumentException or NotSupportedException => "that is not a file's name",
        _ when e.HResult == DiskError => "the disk reports an error",
        _ => "the system refuses it",
    };

    /// <summary>Why a write failed, in words.</summary>
    public static string WhyNotWritten(Exception e) => e switch
    {
        FileFaultException fault => fault.Why,
        FileNotFoundException or DirectoryNotFoundException => "there is no such folder",
        UnauthorizedAccessException => "it, or its folder, may not be written to",
        PathTooLongException => "its name is too long",
        ArgumentOutOfRangeException => "it would be larger than a file may be here",
        ArgumentException or NotSupportedException => "that is not a file's name",
        _ => e.HResult switch
        {
            DiskFull or WindowsDiskFull or WindowsHandleDiskFull => "the disk is full",
            QuotaUsedUp => "no more space is allowed to you on this disk",
            TooLarge => "it would be larger than a file may be here",
            ReadOnlyDisk => "the disk is read-only",
            NoReader => "nobody reads it any more",
            DiskError => "the disk reports an error",
            TooManyLinks => "its links lead round in a circle",
            _ => "the system refuses it",
        },
    };

    // Error numbers of Linux, most of which other systems share; of Windows, its own codes.
    private const int DiskError = 5, TooLarge = 27, DiskFull = 28, ReadOnlyDisk = 30, NoReader = 32, TooManyLinks = 40, QuotaUsedUp = 122;
    private const int WindowsDiskFull = unchecked((int)0x80070070), WindowsHandleDiskFull = unchecked((int)0x80070027);
}
