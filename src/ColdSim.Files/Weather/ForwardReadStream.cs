namespace ColdSim.Files.Weather;

/// <summary>A stream that is read once, from its beginning on, over another that it closes.</summary>
/// <param name="rest">The other stream.</param>
internal abstract class ForwardReadStream(Stream rest) : Stream
{
    /// <summary>The other stream.</summary>
    protected Stream Rest { get; } = rest;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public abstract override int Read(Span<byte> buffer);

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            Rest.Dispose();
        base.Dispose(disposing);
    }
}
