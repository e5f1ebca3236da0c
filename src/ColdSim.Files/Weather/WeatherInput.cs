using System.IO.Compression;
using System.Text;

namespace ColdSim.Files.Weather;

/// <summary>An opened weather file: unpacked, its encoding and first lines known, the rest not yet read.</summary>
internal sealed class WeatherInput : IDisposable
{
    private const int HeadLength = 1 << 16;

    private readonly Stream _bytes;
    private TextReader? _text;

    private WeatherInput(Stream bytes, byte[] head, bool packed)
    {
        _bytes = bytes;
        Packed = packed;
        Bytes = head;
        Encoding = EncodingOf(head);
        using StreamReader reader = new(new MemoryStream(head), Lenient(Encoding));
        List<string> lines = [];
        while (lines.Count < ColumnMap.HeadingLines && reader.ReadLine() is { } line)
            lines.Add(line);
        Head = lines;
    }

    /// <summary>The first bytes, unpacked.</summary>
    public byte[] Bytes { get; }

    /// <summary>The first lines; the last may be cut off.</summary>
    public IReadOnlyList<string> Head { get; }

    /// <summary>Whether it was packed with gzip.</summary>
    public bool Packed { get; }

    public Encoding Encoding { get; }

    /// <summary>The whole as text, from its beginning.</summary>
    public TextReader Text => _text ??= new BoundedLines(new StreamReader(_bytes, Encoding, detectEncodingFromByteOrderMarks: true, bufferSize: 1 << 16));

    /// <summary>The whole as bytes, from its beginning; not together with <see cref="Text"/>.</summary>
    public Stream Raw => _bytes;

    /// <summary>The whole lines of the first bytes.</summary>
    public IEnumerable<string> Lines()
    {
        int end = Bytes.Length < HeadLength ? Bytes.Length : Bytes.AsSpan().LastIndexOf((byte)'\n') + 1;
        using StreamReader reader = new(new MemoryStream(Bytes, 0, end), Lenient(Encoding));
        while (reader.ReadLine() is { } line)
            yield return line;
    }

    /// <summary>Reads the beginning; disposing the result disposes the stream.</summary>
    public static WeatherInput Open(Stream stream)
    {
        byte[] head = Peek(stream);
        bool packed = head is [0x1F, 0x8B, ..];
        Stream bytes = new BoundedStream(new PrefixedStream(head, stream));
        if (packed)
        {
            bytes = new GZipStream(bytes, CompressionMode.Decompress);
            head = Peek(bytes);
            bytes = new BoundedStream(new PrefixedStream(head, bytes));
        }
        return new WeatherInput(bytes, head, packed);
    }

    public void Dispose()
    {
        _text?.Dispose();
        _bytes.Dispose();
    }

    private static byte[] Peek(Stream stream)
    {
        byte[] head = new byte[HeadLength];
        int length = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        return head[..length];
    }

    // UTF-8 if the beginning is valid UTF-8; otherwise one byte a character, as spreadsheets save.
    private static Encoding EncodingOf(byte[] head)
    {
        UTF8Encoding strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
        if (head is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            return strict;
        try
        {
            // The last character of the beginning may be incomplete.
            strict.GetDecoder().GetCharCount(head, 0, head.Length, flush: false);
            return strict;
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1;
        }
    }

    private static Encoding Lenient(Encoding encoding) => encoding is UTF8Encoding ? new UTF8Encoding(false, false) : encoding;
}
