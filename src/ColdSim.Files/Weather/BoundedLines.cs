namespace ColdSim.Files.Weather;

/// <summary>A line that no table has.</summary>
/// <param name="line">The line, from 1.</param>
internal sealed class LongLineException(int line) : IOException("a line longer than 64 kB")
{
    public int Line => line;
}

/// <summary>A text whose lines may only be so long, so that what splits it into records never has to hold more.</summary>
internal sealed class BoundedLines(TextReader rest) : TextReader
{
    private const int Longest = 1 << 16;

    // Two gigabytes of short lines would take minutes.
    private const int MostLines = 100_000_000;
    private const int MostEmptyLines = 1_000_000;

    private int _line = 1;
    private int _ends;
    private int _empty;
    private int _length;

    public override int Peek() => rest.Peek();

    public override int Read()
    {
        Span<char> one = stackalloc char[1];
        return Read(one) == 0 ? -1 : one[0];
    }

    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    public override int Read(Span<char> buffer)
    {
        int length = rest.Read(buffer);
        ReadOnlySpan<char> read = buffer[..length];
        while (read.IndexOfAny('\n', '\r') is int end and >= 0)
        {
            Add(end);
            _line += read[end] == '\n' ? 1 : 0;
            _ends++;
            _empty = _length == 0 ? _empty + 1 : 0;
            _length = 0;
            read = read[(end + 1)..];
        }

        Add(read.Length);
        if (_empty > MostEmptyLines)
            throw new EndlessFileException("empty for a million lines");
        if (_ends > MostLines)
            throw new EndlessFileException("longer than 100 million lines");
        return length;
    }

    public override int ReadBlock(Span<char> buffer)
    {
        int all = 0;
        while (all < buffer.Length && Read(buffer[all..]) is int length and > 0)
            all += length;
        return all;
    }

    public override int ReadBlock(char[] buffer, int index, int count) => ReadBlock(buffer.AsSpan(index, count));

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            rest.Dispose();
        base.Dispose(disposing);
    }

    private void Add(int characters)
    {
        if ((_length += characters) > Longest)
            throw new LongLineException(_line);
    }
}
