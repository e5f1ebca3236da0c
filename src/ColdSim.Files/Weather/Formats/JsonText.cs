namespace ColdSim.Files.Weather.Formats;

/// <summary>A JSON document in memory, and the lines of its places.</summary>
internal sealed class JsonText
{
    private const int Largest = 32 << 20;

    private readonly ReadOnlyMemory<byte> _bytes;
    private int _line = 1;
    private int _counted;

    private JsonText(ReadOnlyMemory<byte> bytes) => _bytes = bytes;

    public ReadOnlySpan<byte> Bytes => _bytes.Span;

    /// <summary>Reads it whole; null, and a fault, where it is larger than any forecast.</summary>
    public static JsonText? Read(WeatherInput input, WeatherFaults faults)
    {
        using MemoryStream all = new();
        byte[] buffer = new byte[1 << 16];
        while (all.Length < Largest && input.Raw.Read(buffer) is int n and > 0)
            all.Write(buffer, 0, n);
        if (all.Length >= Largest)
        {
            faults.Report(1, 1, "a JSON document of over 32 MB", "accepted: up to 32 MB; the same data as CSV may be longer");
            return null;
        }

        ReadOnlyMemory<byte> bytes = all.GetBuffer().AsMemory(0, (int)all.Length);
        return new(bytes.Span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? bytes[3..] : bytes);
    }

    /// <summary>The line of a place; fast where places are asked for in order.</summary>
    public int LineOf(long place)
    {
        if (place < _counted)
            (_line, _counted) = (1, 0);
        _line += Bytes[_counted..(int)place].Count((byte)'\n');
        _counted = (int)place;
        return _line;
    }

    /// <summary>The column of a place, in bytes from 1.</summary>
    public int ColumnOf(long place) => (int)place - Bytes[..(int)place].LastIndexOf((byte)'\n');

    /// <summary>Whether nothing but blanks follows a place.</summary>
    public bool IsEnd(int line, int column)
    {
        ReadOnlySpan<byte> rest = Bytes;
        for (; line > 1; line--)
        {
            int end = rest.IndexOf((byte)'\n');
            if (end < 0)
                return true;
            rest = rest[(end + 1)..];
        }

        return column - 1 >= rest.Length || rest[(column - 1)..].Trim(" \t\r\n"u8).IsEmpty;
    }
}
