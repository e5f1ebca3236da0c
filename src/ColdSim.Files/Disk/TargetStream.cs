namespace ColdSim.Files.Disk;

/// <summary>What content is written to: a fault of the disk names the person's file, and is told apart from a fault of whoever writes the content.</summary>
/// <param name="inner">The file or stream.</param>
/// <param name="fault">A fault in our words.</param>
internal sealed class TargetStream(Stream inner, Func<Exception, FileFaultException> fault) : Stream
{
    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        try
        {
            inner.Write(buffer);
        }
        catch (Exception e) when (FileFaultException.IsOfWrite(e))
        {
            throw fault(e);
        }
    }

    public override void Flush()
    {
        try
        {
            inner.Flush();
        }
        catch (Exception e) when (FileFaultException.IsOfWrite(e))
        {
            throw fault(e);
        }
    }

    public override ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
    {
        Write(buffer.Span);
        return ValueTask.CompletedTask;
    }

    public override Task FlushAsync(CancellationToken cancellationToken)
    {
        Flush();
        return Task.CompletedTask;
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
