using System.Text;

namespace ColdSim.Files.Logs;

/// <summary>The log of a scenario's readings: a CSV beside it to which whole lines are appended and nothing else is ever done.</summary>
/// <remarks>
/// <para>An append takes the file for itself, looks at its last byte, and hands the operating system all of the new text in one write at the
/// file's end, then has it put on disk. A process killed before that write leaves the file as it was, one killed after it the whole line.</para>
/// <para>A last line without its end (power gone, or an editor's way) is never changed: the new text then begins with a line's end, so that what
/// stands there stays a line of its own, good or damaged.</para>
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
    /// <exception cref="IOException">Others kept the file for seconds, or it cannot be written.</exception>
    public static void Append(string path, IReadOnlyList<LogEntry> entries)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(entries);
        StringBuilder lines = new();
        foreach (LogEntry entry in entries)
            lines.Append(LogLine.Of(entry)).Append('\n');
        using FileStream stream = Alone(path);
        long length = stream.Length;
        string before = length == 0 ? LogLine.Header + "\n" : EndsWithLineEnd(stream) ? "" : "\n";
        byte[] bytes = Strict.GetBytes(before + lines);
        stream.Seek(0, SeekOrigin.End);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    /// <summary>Every line with its number; lines that are empty are passed over.</summary>
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
    private static FileStream Alone(string path) => Patiently(
        () => new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0));

    private static byte[] Bytes(string path) => Patiently(() =>
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    });

    // Another writer has it for milliseconds.
    private static T Patiently<T>(Func<T> open)
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
