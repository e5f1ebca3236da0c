using System.Globalization;
using System.Text;

namespace ColdSim.Tests.Files.Weather;

/// <summary>A weather CSV that is generated while it is read, so that it is never whole in memory: invented data, a row every few minutes.</summary>
/// <param name="rows">How many rows.</param>
/// <param name="minutes">Between two of them.</param>
/// <param name="at">Told of every row that is about to be made.</param>
internal sealed class GeneratedRows(long rows, int minutes, Action<long>? at = null) : Stream
{
    private static readonly DateTime First = new(1900, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    private byte[] _waiting = Encoding.UTF8.GetBytes("time,air [°C],wind [m/s],dew point [°C],sun [W/m²]\n");
    private int _read;
    private long _row;

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
        if (_read == _waiting.Length && !Make())
            return 0;
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

    // A cold wave of ten days, days within it, a wind that is not always known, and a gap of three spacings now and then.
    private bool Make()
    {
        StringBuilder text = new();
        for (int i = 0; i < 500 && _row < rows; i++, _row++)
        {
            at?.Invoke(_row);
            long minute = (_row + _row / 5000 * 2) * minutes;
            double day = minute / 1440.0, air = -4 - 9 * Math.Cos(day / 10 * 2 * Math.PI) - 5 * Math.Cos(day * 2 * Math.PI);
            string wind = _row % 97 == 5 ? "" : (_row % 7).ToString(CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"{First.AddMinutes(minute):yyyy-MM-dd'T'HH:mm}Z,{air:0.0},{wind},{air - 3:0.0},{Math.Max(0, 200 * Math.Sin(day * 2 * Math.PI)):0}\n");
        }

        (_waiting, _read) = (Encoding.UTF8.GetBytes(text.ToString()), 0);
        return _waiting.Length > 0;
    }
}
