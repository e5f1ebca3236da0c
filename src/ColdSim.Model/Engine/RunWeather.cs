using ColdSim.Model.Weather;

namespace ColdSim.Model.Engine;

/// <summary>The weather by the seconds of a run, read forward.</summary>
/// <param name="weather">The weather.</param>
/// <param name="start">Start of the run.</param>
internal sealed class RunWeather(WeatherSeries weather, DateTimeOffset start)
{
    private readonly double _start_s = (start - weather.First).TotalSeconds;
    private int _row;

    /// <summary>When it ends. [s]</summary>
    public double End_s { get; } = (weather.Last - start).TotalSeconds;

    /// <summary>The weather at a time of the run. [s]</summary>
    public WeatherSample At(double time_s) => weather.At(_start_s + time_s, ref _row);

    /// <summary>The instant of a time of the run.</summary>
    public DateTimeOffset Instant(double time_s) => start.AddSeconds(time_s);

    /// <summary>The time of its next row. [s]</summary>
    public double NextRow_s(double time_s) => weather.NextRow_s(_start_s + time_s, _row) - _start_s;
}
