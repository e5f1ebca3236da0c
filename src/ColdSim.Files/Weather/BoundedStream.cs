namespace ColdSim.Files.Weather;

/// <summary>A weather file goes on beyond all that a record of weather has.</summary>
/// <param name="how">How long it is.</param>
internal sealed class EndlessFileException(string how) : IOException(how)
{
    /// <summary>The line at which that is known; null where it is the one after the last that was read.</summary>
    public int? Line { get; init; }
}

/// <summary>A stream that is read as far as a weather file may go, so that one without an end comes to an end.</summary>
/// <param name="rest">What is read.</param>
/// <param name="most">The most bytes of it.</param>
internal sealed class BoundedStream(Stream rest, long most = BoundedStream.Longest) : ForwardReadStream(rest)
{
    // Some sixty million rows.
    private const long Longest = 2L << 30;

    private long _read;

    public override int Read(Span<byte> buffer)
    {
        int length = Rest.Read(buffer);
        if ((_read += length) > most)
            throw new EndlessFileException("longer than 2 GB");
        return length;
    }
}
