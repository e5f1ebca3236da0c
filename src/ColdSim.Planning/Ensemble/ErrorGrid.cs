using ColdSim.Model.Weather;

namespace ColdSim.Planning.Ensemble;

/// <summary>The instants of all weather rows of a run, on which the forecast's error is a path.</summary>
/// <remarks>
/// In standard units the path is an AR(1): a part of the value before, and as much new noise as keeps the variance at one. Its spread is
/// therefore the requested one at every instant, and the correlation over a time is exp(−time / correlation time), however the rows are spaced.
/// </remarks>
internal sealed class ErrorGrid
{
    private readonly double[] _spread_K;
    private readonly double[] _kept;
    private readonly double[] _renewed;

    /// <summary>Gathers the rows.</summary>
    /// <param name="weathers">All weathers of the run.</param>
    /// <param name="start">When the run starts; until then there is no lead.</param>
    /// <param name="end">When it ends.</param>
    /// <param name="errors">The sizes.</param>
    public ErrorGrid(IReadOnlyList<WeatherSeries> weathers, DateTimeOffset start, DateTimeOffset end, ErrorSizes errors)
    {
        Rows = [.. weathers.Select(w => Within(w, start, end))];
        long[] instants = [.. weathers.Zip(Rows).SelectMany(p => Enumerable.Range(p.Second.First, p.Second.Count).Select(r => Ticks(p.First, r))).Distinct().Order()];
        Places = [.. weathers.Zip(Rows).Select(p => (int[])[.. Enumerable.Range(p.Second.First, p.Second.Count).Select(r => Array.BinarySearch(instants, Ticks(p.First, r)))])];
        Count = instants.Length;
        _spread_K = new double[Count];
        _kept = new double[Count];
        _renewed = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            _spread_K[i] = errors.TemperatureAt_K(Math.Max(0, (instants[i] - start.UtcTicks) / (double)TimeSpan.TicksPerSecond));
            double apart_s = i == 0 ? double.PositiveInfinity : (instants[i] - instants[i - 1]) / (double)TimeSpan.TicksPerSecond;
            _kept[i] = Math.Exp(-apart_s / errors.CorrelationTime.Value);
            _renewed[i] = Math.Sqrt(1 - _kept[i] * _kept[i]);
        }
    }

    /// <summary>Number of instants.</summary>
    public int Count { get; }

    /// <summary>The rows of each weather that the run can see.</summary>
    public IReadOnlyList<(int First, int Count)> Rows { get; }

    /// <summary>The instant of each of them, by its place.</summary>
    public IReadOnlyList<int[]> Places { get; }

    /// <summary>Draws a member's path of temperature errors. [K]</summary>
    public void Temperature(in CounterRandom numbers, double tailScale, double[] path_K)
    {
        double z = 0;
        for (int i = 0; i < Count; i++)
        {
            z = _kept[i] * z + _renewed[i] * numbers.Normal(CounterRandom.Purpose.Temperature, i);
            path_K[i] = tailScale * _spread_K[i] * z;
        }
    }

    /// <summary>Draws a member's path of the wind's logarithm; it is as long remembered as the temperature's.</summary>
    public void Wind(in CounterRandom numbers, double spread, double[] path)
    {
        double z = 0;
        for (int i = 0; i < Count; i++)
        {
            z = _kept[i] * z + _renewed[i] * numbers.Normal(CounterRandom.Purpose.Wind, i);
            path[i] = spread * z;
        }
    }

    // From the last row before the run to the first after it: a year's file is not shifted for three nights.
    private static (int First, int Count) Within(WeatherSeries weather, DateTimeOffset start, DateTimeOffset end)
    {
        double from_s = (start - weather.First).TotalSeconds, to_s = (end - weather.First).TotalSeconds;
        int first = 0, last = weather.Count - 1;
        while (first < last && weather.RowTime_s(first + 1) <= from_s) first++;
        while (last > first && weather.RowTime_s(last - 1) >= to_s) last--;
        return (first, last - first + 1);
    }

    private static long Ticks(WeatherSeries weather, int row) => weather.First.AddSeconds(weather.RowTime_s(row)).UtcTicks;
}
