using ColdSim.Model.Site;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Weather;

/// <summary>Weather over time, linear between its rows; time in seconds since its first row.</summary>
/// <remarks>
/// Sky temperature (Berdahl and Martin 1984), vapour pressure and sun on walls are worked out once at the rows and are linear
/// between them too. Missing pressure is the standard atmosphere's at the site's elevation.
/// </remarks>
public sealed class WeatherSeries
{
    private readonly double[] _time_s;
    private readonly WeatherSample[] _samples;
    private readonly double[] _dewPoint_K;
    private readonly double[] _cloud_frac;

    /// <summary>Builds the series from rows in order of time.</summary>
    /// <param name="rows">At least two, strictly ascending instants.</param>
    /// <param name="defaults">Values assumed for missing columns and values.</param>
    /// <param name="site">Elevation for pressure, position for the sun.</param>
    /// <exception cref="ArgumentException">Fewer than two rows, or not ascending.</exception>
    public WeatherSeries(IReadOnlyList<WeatherRow> rows, WeatherDefaults defaults, SiteSpecification site)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(defaults);
        ArgumentNullException.ThrowIfNull(site);
        if (rows.Count < 2)
            throw new ArgumentException("Weather needs at least two rows.", nameof(rows));
        First = rows[0].Time;
        Last = rows[^1].Time;
        _time_s = new double[rows.Count];
        _samples = new WeatherSample[rows.Count];
        _dewPoint_K = new double[rows.Count];
        _cloud_frac = new double[rows.Count];
        for (int i = 0; i < rows.Count; i++)
        {
            _time_s[i] = (rows[i].Time - First).TotalSeconds;
            if (i > 0 && _time_s[i] <= _time_s[i - 1])
                throw new ArgumentException($"Row {i + 1} does not come after row {i}.", nameof(rows));
            _cloud_frac[i] = rows[i].Cloud_frac ?? defaults.Cloud_frac;
            _samples[i] = Sample(rows[i], defaults, site, out _dewPoint_K[i]);
        }
    }

    private WeatherSeries(WeatherSeries like, double pressure_factor)
    {
        (First, Last, _time_s, _dewPoint_K, _cloud_frac) = (like.First, like.Last, like._time_s, like._dewPoint_K, like._cloud_frac);
        _samples = [.. like._samples.Select(s => s with { Pressure_Pa = s.Pressure_Pa * pressure_factor })];
    }

    /// <summary>The same rows with samples that the caller owns and may change.</summary>
    internal WeatherSeries(WeatherSeries like, WeatherSample[] samples)
    {
        (First, Last, _time_s, _dewPoint_K, _cloud_frac) = (like.First, like.Last, like._time_s, like._dewPoint_K, like._cloud_frac);
        _samples = samples;
    }

    /// <summary>Instant of the first row.</summary>
    public DateTimeOffset First { get; }

    /// <summary>Instant of the last row.</summary>
    public DateTimeOffset Last { get; }

    /// <summary>Number of rows.</summary>
    public int Count => _time_s.Length;

    /// <summary>The same weather under another air pressure, for the sensitivity to height.</summary>
    /// <param name="pressure_factor">What every pressure is multiplied by.</param>
    public WeatherSeries UnderPressure(double pressure_factor) => new(this, pressure_factor);

    /// <summary>When a row is. [s since <see cref="First"/>]</summary>
    /// <param name="row">Its place, from 0.</param>
    public double RowTime_s(int row) => _time_s[row];

    internal WeatherSample[] CopySamples() => [.. _samples];

    /// <summary>
    /// A row's weather, so much warmer and windier. The dew point goes with the air, so that relative humidity stays about what it was;
    /// the sky follows both under the same cloud.
    /// </summary>
    internal WeatherSample Shifted(int row, double warmer_K, double wind_factor)
    {
        WeatherSample sample = _samples[row];

        // An unshifted row stays the same to the last bit.
        if (warmer_K == 0 && wind_factor == 1) return sample;
        double air_K = Math.Clamp(sample.Air_K + warmer_K, ShiftedWeather.Coldest_K, ShiftedWeather.Warmest_K);
        double dewPoint_K = Math.Max(_dewPoint_K[row] + air_K - sample.Air_K, ShiftedWeather.Coldest_K);
        return sample with
        {
            Air_K = air_K,
            Wind_m_s = Math.Min(sample.Wind_m_s * wind_factor, ShiftedWeather.Windiest_m_s),
            VapourPressure_Pa = SaturationVapour.PressureOverWater_Pa(dewPoint_K),
            Sky_K = SkyTemperature.BerdahlMartin_K(air_K, dewPoint_K, _cloud_frac[row]),
        };
    }

    /// <summary>The weather at a time.</summary>
    /// <param name="time_s">Seconds since <see cref="First"/>; beyond the ends the end row holds. [s]</param>
    /// <param name="row">The row before, kept by the caller between calls so that a walk through time needs no search.</param>
    public WeatherSample At(double time_s, ref int row)
    {
        int last = _time_s.Length - 2;
        row = Math.Clamp(row, 0, last);
        while (row < last && time_s >= _time_s[row + 1]) row++;
        while (row > 0 && time_s < _time_s[row]) row--;
        double x = Math.Clamp((time_s - _time_s[row]) / (_time_s[row + 1] - _time_s[row]), 0, 1);
        ref readonly WeatherSample a = ref _samples[row];
        ref readonly WeatherSample b = ref _samples[row + 1];
        return new WeatherSample(
            a.Air_K + x * (b.Air_K - a.Air_K),
            a.Wind_m_s + x * (b.Wind_m_s - a.Wind_m_s),
            a.VapourPressure_Pa + x * (b.VapourPressure_Pa - a.VapourPressure_Pa),
            a.Sky_K + x * (b.Sky_K - a.Sky_K),
            a.Pressure_Pa + x * (b.Pressure_Pa - a.Pressure_Pa),
            a.WindowSun_W_m2 + x * (b.WindowSun_W_m2 - a.WindowSun_W_m2),
            a.CylinderSun_W_m2 + x * (b.CylinderSun_W_m2 - a.CylinderSun_W_m2),
            a.LevelSun_W_m2 + x * (b.LevelSun_W_m2 - a.LevelSun_W_m2));
    }

    /// <summary>Time of the first row after a time, where the slopes change; infinite past the end. [s]</summary>
    /// <param name="time_s">Seconds since <see cref="First"/>. [s]</param>
    /// <param name="row">As in <see cref="At"/>.</param>
    public double NextRow_s(double time_s, int row)
    {
        for (int i = Math.Max(row, 0); i < _time_s.Length; i++)
        {
            if (_time_s[i] > time_s) return _time_s[i];
        }

        return double.PositiveInfinity;
    }

    private static WeatherSample Sample(in WeatherRow row, WeatherDefaults defaults, SiteSpecification site, out double dewPoint_K)
    {
        double vapour_Pa = row.DewPoint_K is double dew_K
            ? SaturationVapour.PressureOverWater_Pa(dew_K)
            : Humidity.VapourPressure_Pa(row.Air_K, defaults.RelativeHumidity_frac);
        dewPoint_K = row.DewPoint_K ?? SaturationVapour.DewPoint_K(vapour_Pa);
        double cloud = row.Cloud_frac ?? defaults.Cloud_frac;
        (double windows, double cylinder) = GlobalHorizontalIrradiance.OnWalls_W_m2(row.Sun_W_m2 ?? defaults.Sun_W_m2, row.Time, site);
        return new WeatherSample(
            row.Air_K,
            row.Wind_m_s ?? defaults.Wind_m_s,
            vapour_Pa,
            SkyTemperature.BerdahlMartin_K(row.Air_K, dewPoint_K, cloud),
            row.Pressure_Pa ?? StandardAtmosphere.Pressure_Pa(site.Elevation_m),
            windows,
            cylinder,
            row.Sun_W_m2 ?? (defaults.Sun_W_m2 > 0 ? defaults.Sun_W_m2 : GlobalHorizontalIrradiance.BySky_W_m2(row.Time, site, cloud)));
    }
}
