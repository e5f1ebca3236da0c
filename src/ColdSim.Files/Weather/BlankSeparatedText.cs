namespace ColdSim.Files.Weather;

/// <summary>A text whose fields are parted by any number of blanks and tabs, as one whose fields are parted by one blank.</summary>
internal sealed class BlankSeparatedText(TextReader rest) : TextReader
{
    private bool _begun;
    private bool _blank;

    public override int Peek() => -1;

    public override int Read()
    {
        Span<char> one = stackalloc char[1];
        return Read(one) == 0 ? -1 : one[0];
    }

    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    public override int ReadBlock(Span<char> buffer)
    {
        int all = 0;
        while (all < buffer.Length && Read(buffer[all..]) is int length and > 0)
            all += length;
        return all;
    }

    public override int ReadBlock(char[] buffer, int index, int count) => ReadBlock(buffer.AsSpan(index, count));

    // Never longer than what it is made of but for the blank that is put back, so half the buffer is read at a time.
    public override int Read(Span<char> buffer)
    {
        if (buffer.Length < 2)
            throw new ArgumentException("at least two characters are read at a time", nameof(buffer));
        int to = 0;
        while (to == 0)
        {
            Span<char> half = buffer[(buffer.Length / 2)..];
            int length = rest.Read(half);
            if (length == 0)
                return 0;
            for (int i = 0; i < length; i++)
            {
                char c = half[i];
                if (c is ' ' or '\t')
                {
                    _blank = _begun;
                    continue;
                }

                bool end = c is '\r' or '\n';
                if (_blank && !end)
                    buffer[to++] = ' ';
                buffer[to++] = c;
                (_begun, _blank) = (!end, false);
            }
        }

        return to;
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            rest.Dispose();
        base.Dispose(disposing);
    }
}
