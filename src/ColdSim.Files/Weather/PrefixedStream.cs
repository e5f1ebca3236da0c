namespace ColdSim.Files.Weather;

/// <summary>A stream whose first bytes were already read: gives these first, then the rest.</summary>
internal sealed class PrefixedStream(byte[] head, Stream rest) : Stream
{
    private int _at;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        if (_at >= head.Length)
            return rest.Read(buffer);
        int length = Math.Min(buffer.Length, head.Length - _at);
        head.AsSpan(_at, length).CopyTo(buffer);
        _at += length;
        return length;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            rest.Dispose();
        base.Dispose(disposing);
    }
}
