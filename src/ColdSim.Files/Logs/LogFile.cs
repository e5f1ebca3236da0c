using System.Text;

namespace ColdSim.Files.Logs;

/// <summary>The log of a scenario's readings: a CSV beside it to which whole lines are appended; nothing in it is ever changed.</summary>
/// <remarks>
/// <para>An append takes the file for itself, looks at its last byte, and hands the operating system all of the new text in one write at the
/// file's end, then has it put on disk. A process killed before that write leaves the file as it was, one killed after it the whole line.</para>
/// <para>A last line without its end (power gone, or an editor's way) is never changed: the new text then begins with a line's end, so that the
/// unfinished line remains a line of its own, good or damaged.</para>
/// </remarks>
public static class LogFile
{
    private const int Tries = 400;
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: false);

    /// <summary>The log's file of a scenario: <c>trip.toml</c> has <c>trip.log.csv</c>.</summary>
    /// <param name="scenario">The scenario's file.</param>
    public static string PathOf(string scenario) => Path.ChangeExtension(scenario, ".log.csv");

    /// <summary>Appends readings; makes the file with its header where there is none.</summary>
    /// <param name="path">The log.</param>
    /// <param name="entries">What to append, in one write.</param>
    /// <exception cref="IOException">Another process kept the file locked for seconds, or it cannot be written.</exception>
    public static void Append(string path, IReadOnlyList<LogEntry> entries)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(entries);
        StringBuilder lines = new();
        foreach (LogEntry entry in entries)
            lines.Append(LogLine.Of(entry)).Append('\n');
        using FileStream stream = OpenExclusively(path);
        long length = stream.Length;
        string before = length == 0 ? LogLine.Header + "\n" : EndsWithLineEnd(stream) ? "" : "\n";
        byte[] bytes = Strict.GetBytes(before + lines);
        stream.Seek(0, SeekOrigin.End);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>Every line with its number; empty lines are skipped.</summary>
    /// <param name="path">The log.</param>
    internal static IReadOnlyList<(int Number, string Text)> Lines(string path)
    {
        string text = Strict.GetString(Bytes(path)).TrimStart('\uFEFF');
        return [.. text.Split('\n').Select((t, i) => (i + 1, t.TrimEnd('\r'))).Where(l => l.Item2.Trim().Length > 0)];
    }

    private static bool EndsWithLineEnd(FileStream stream)
    {
        stream.Seek(-1, SeekOrigin.End);
        return stream.ReadByte() == '\n';
    }

    // Unbuffered, so that one call is one write.
    private static FileStream OpenExclusively(string path) => Retry(
        () => new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0));

    private static byte[] Bytes(string path) => Retry(() =>
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
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
            catch (IOException e) when (tries < Tries && e is not (FileNotFoundException or DirectoryNotFoundException or PathTooLongException or EndOfStreamException))
            {
                Thread.Sleep(Random.Shared.Next(5, 20));
            }
        }
    }
}
