namespace ColdSim.Files.Disk;

/// <summary>What content is written to: a fault of the disk names the person's file, and is told apart from a fault of whoever writes the content.</summary>
/// <param name="inner">The file or stream.</param>
/// <param name="fault">A fault in our words.</param>
internal sealed class TargetStream(Stream inner, Func<Exception, FileFaultException> fault) : ForwardWriteStream
{
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
}
