namespace ColdSim.Files.Weather;

/// <summary>A stream whose first bytes were already read: gives these first, then the rest.</summary>
internal sealed class PrefixedStream(byte[] head, Stream rest) : ForwardReadStream(rest)
{
    private int _at;

    public override int Read(Span<byte> buffer)
    {
        if (_at >= head.Length)
            return Rest.Read(buffer);
        int length = Math.Min(buffer.Length, head.Length - _at);
        head.AsSpan(_at, length).CopyTo(buffer);
        _at += length;
        return length;
    }
}
