using System.Text;
using ColdSim.Files.Disk;

namespace ColdSim.Files.Logs;

/// <summary>The log of a scenario's readings: a CSV beside it to which whole lines are appended; nothing in it is ever changed.</summary>
/// <remarks>
/// <para>An append takes the file for itself, looks at its last byte, and hands the operating system all of the new text in one write at the
/// file's end, then has it put on disk. A process killed before that write leaves the file as it was, one killed after it the whole line.</para>
/// <para>A last line without its end (power gone, or an editor's way) is never changed: the new text then begins with a line's end, so that the
/// unfinished line remains a line of its own, good or damaged.</para>
/// </remarks>
internal static class LogFile
{
    private const int Tries = 400;
    private const int Largest = 1 << 24;
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: false);

    /// <summary>The log's file of a scenario: <c>trip.toml</c> has <c>trip.log.csv</c>.</summary>
    /// <param name="scenario">The scenario's file.</param>
    public static string PathOf(string scenario) => Path.ChangeExtension(scenario, ".log.csv");

    /// <summary>Appends readings; makes the file with its header where there is none.</summary>
    /// <param name="path">The log.</param>
    /// <param name="entries">What to append, in one write.</param>
    /// <param name="reads">The files that are read besides, none of which the log may be.</param>
    /// <exception cref="FileFaultException">It cannot be written; it is then byte for byte as it was.</exception>
    public static void Append(string path, IReadOnlyList<LogEntry> entries, FilesRead? reads = null) => Append(path, entries, reads, DiskCalls.Real);

    /// <summary>The same on another disk.</summary>
    internal static void Append(string path, IReadOnlyList<LogEntry> entries, FilesRead? reads, DiskCalls calls)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(entries);
        SystemCalls.IgnoreFileSizeSignal();
        StringBuilder lines = new();
        foreach (LogEntry entry in entries)
            lines.Append(LogLine.Of(entry)).Append('\n');
        if (reads?.SameAs(path, ownName: true) is { } read)
            throw FileFaultException.Refused($"the log '{path}' is the same file as '{read}', another input of this run; nothing was written");
        CheckRegular(path, FileFaultException.NotWritten);
        try
        {
            string file = CanonicalPath.BehindLink(path);
            using FileStream stream = OpenExclusively(file, out bool isNew);
            if (stream.Length > 0 && !LogLine.IsHeader(FirstLine(stream)))
                throw FileFaultException.NotWritten(path, $"its first line is not a log's header; accepted: {LogLine.Header}");
            Append(stream, isNew ? file : null, lines.ToString(), calls);
        }
        catch (Exception e) when (FileFaultException.IsOfWrite(e) && e is not FileFaultException)
        {
            throw FileFaultException.NotWritten(path, e);
        }
    }

    // A write that fails is taken back, and so is a file that was made for it.
    private static void Append(FileStream stream, string? made, string lines, DiskCalls calls)
    {
        long length = stream.Length;
        string before = length == 0 ? LogLine.Header + "\n" : EndsWithLineEnd(stream) ? "" : "\n";
        byte[] bytes = Strict.GetBytes(before + lines);
        stream.Seek(0, SeekOrigin.End);
        try
        {
            calls.Through(stream).Write(bytes);
            calls.FlushToDisk(stream);
        }
        catch
        {
            stream.SetLength(length);
            if (made is not null)
                File.Delete(made);
            throw;
        }
    }

    /// <summary>Every line with its number; empty lines are skipped.</summary>
    /// <param name="path">The log.</param>
    internal static IReadOnlyList<(int Number, string Text)> Lines(string path)
    {
        string text = Strict.GetString(Bytes(path)).TrimStart('\uFEFF');
        return [.. text.Split('\n').Select((t, i) => (i + 1, t.TrimEnd('\r'))).Where(l => l.Item2.Trim().Length > 0)];
    }

    // To open a pipe would wait for somebody at its other end.
    private static void CheckRegular(string path, Func<string, string, FileFaultException> fault)
    {
        if (FileStatus.Of(path) is { Kind: not FileKind.Regular } other)
            throw fault(path, other.KindInWords);
    }

    private static string FirstLine(FileStream stream)
    {
        byte[] bytes = new byte[2 * LogLine.Header.Length];
        stream.Seek(0, SeekOrigin.Begin);
        int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return Strict.GetString(bytes, 0, length).TrimStart('\uFEFF').TrimStart('\r', '\n').Split('\n')[0].TrimEnd('\r');
    }

    private static bool EndsWithLineEnd(FileStream stream)
    {
        stream.Seek(-1, SeekOrigin.End);
        return stream.ReadByte() == '\n';
    }

    // Unbuffered, so that one call is one write.
    private static FileStream OpenExclusively(string path, out bool isNew)
    {
        bool made = false;
        FileStream stream = Retry(() =>
        {
            made = !File.Exists(path);
            return new FileStream(path, made ? FileMode.CreateNew : FileMode.Open, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        });
        isNew = made;
        return stream;
    }

    private static byte[] Bytes(string path) => Retry(() =>
    {
        CheckRegular(path, FileFaultException.NotRead);
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        if (stream.Length > Largest)
            throw FileFaultException.NotRead(path, "it is larger than 16 MB, which no log is");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    });

    // Another writer holds the file for milliseconds only.
    private static T Retry<T>(Func<T> open)
    {
        for (int tries = 1; ; tries++)
        {
            try
            {
                return open();
            }
            catch (IOException e) when (tries < Tries && e is not (FileNotFoundException or DirectoryNotFoundException or PathTooLongException or EndOfStreamException or FileFaultException))
            {
                Thread.Sleep(Random.Shared.Next(5, 20));
            }
        }
    }
}
