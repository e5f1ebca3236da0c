namespace ColdSim.Model.Weather;

/// <summary>A copy of a weather whose rows can be shifted again and again without new memory.</summary>
/// <remarks>It belongs to one thread: a run on <see cref="Series"/> must be over before rows are shifted again.</remarks>
internal sealed class ShiftedWeather
{
    /// <summary>No row gets colder, nor its dew point. [K]</summary>
    internal const double Coldest_K = 190;

    /// <summary>No row gets warmer. [K]</summary>
    internal const double Warmest_K = 330;

    /// <summary>No row gets windier. [m/s]</summary>
    internal const double Windiest_m_s = 60;

    private readonly WeatherSeries _like;
    private readonly WeatherSample[] _samples;

    /// <summary>Copies a weather.</summary>
    /// <param name="like">The weather; it is not changed.</param>
    public ShiftedWeather(WeatherSeries like)
    {
        ArgumentNullException.ThrowIfNull(like);
        _like = like;
        _samples = like.CopySamples();
        Series = new WeatherSeries(like, _samples);
    }

    /// <summary>The weather as its rows were shifted last.</summary>
    public WeatherSeries Series { get; }

    /// <summary>Shifts a row from where the copied weather has it.</summary>
    /// <param name="row">Its place, from 0.</param>
    /// <param name="warmer_K">Added to air and dew point; 0 leaves them to the last bit. [K]</param>
    /// <param name="wind_factor">What wind is multiplied by.</param>
    public void Shift(int row, double warmer_K, double wind_factor) => _samples[row] = _like.Shifted(row, warmer_K, wind_factor);
}
