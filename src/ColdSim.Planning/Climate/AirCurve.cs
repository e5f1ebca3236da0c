using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>A few rows in a row, as far as their air is drawn.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last.</param>
/// <param name="First_K">Air in the first. [K]</param>
/// <param name="Last_K">Air in the last. [K]</param>
/// <param name="Low_K">Lowest between. [K]</param>
/// <param name="High_K">Highest between. [K]</param>
public readonly record struct AirSlice(DateTimeOffset From, DateTimeOffset To, double First_K, double Last_K, double Low_K, double High_K)
{
    /// <summary>The two as one.</summary>
    public AirSlice With(in AirSlice next)
        => new(From, next.To, First_K, next.Last_K, Math.Min(Low_K, next.Low_K), Math.Max(High_K, next.High_K));
}

/// <summary>Air over time to be drawn: row by row as long as there are few, then ever more rows to a slice, far finer than any screen.</summary>
internal sealed class AirCurve
{
    private const int Most = 1 << 14;

    private readonly List<AirSlice> _slices = [];
    private int _rowsEach = 1;
    private int _inLast = 1;

    /// <summary>In order of time.</summary>
    public IReadOnlyList<AirSlice> Slices => _slices;

    /// <summary>Takes the next row.</summary>
    public void Add(in WeatherRow row)
    {
        AirSlice own = new(row.Time, row.Time, row.Air_K, row.Air_K, row.Air_K, row.Air_K);
        if (_inLast < _rowsEach)
        {
            _slices[^1] = _slices[^1].With(own);
            _inLast++;
            return;
        }

        if (_slices.Count == Most)
            Halve();
        _slices.Add(own);
        _inLast = 1;
    }

    private void Halve()
    {
        for (int i = 0; i < Most / 2; i++)
            _slices[i] = _slices[2 * i].With(_slices[2 * i + 1]);
        _slices.RemoveRange(Most / 2, Most / 2);
        _rowsEach *= 2;
    }

    /// <summary>Air temperature by linear interpolation between two rows. [K]</summary>
    internal static double Interpolate_K(in WeatherRow before, in WeatherRow after, DateTimeOffset time)
        => before.Air_K + (after.Air_K - before.Air_K) * ((time - before.Time) / (after.Time - before.Time));
}
