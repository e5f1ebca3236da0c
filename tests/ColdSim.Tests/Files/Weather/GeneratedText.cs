using System.Text;

namespace ColdSim.Tests.Files.Weather;

/// <summary>A text that is generated while it is read, so that it is never whole in memory.</summary>
/// <param name="head">Its beginning.</param>
/// <param name="next">The next part of it; empty at its end.</param>
internal sealed class GeneratedText(string head, Func<string> next) : Stream
{
    private byte[] _waiting = Encoding.UTF8.GetBytes(head);
    private int _read;

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
        if (_read == _waiting.Length)
            (_waiting, _read) = (Encoding.UTF8.GetBytes(next()), 0);
        int length = Math.Min(buffer.Length, _waiting.Length - _read);
        _waiting.AsSpan(_read, length).CopyTo(buffer);
        _read += length;
        return length;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
