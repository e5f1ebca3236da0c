namespace ColdSim.Model.Weather;

/// <summary>What stands in for a column the weather file does not have. Each use is named in the report.</summary>
public sealed record WeatherDefaults
{
    /// <summary>Wind at mast height. [m/s]</summary>
    public double Wind_m_s { get; init; } = 2.0;

    /// <summary>Relative humidity over water, from which a dew point is taken.</summary>
    public double RelativeHumidity_frac { get; init; } = 0.75;

    /// <summary>Cloud cover, 0 to 1.</summary>
    public double Cloud_frac { get; init; } = 0.5;

    /// <summary>Global horizontal irradiance. [W/m²]</summary>
    public double Sun_W_m2 { get; init; }
}
