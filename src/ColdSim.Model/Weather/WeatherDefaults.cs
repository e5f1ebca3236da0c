namespace ColdSim.Model.Weather;

/// <summary>Values assumed for columns that the weather file does not have. Each use is named in the report.</summary>
public sealed record WeatherDefaults
{
    /// <summary>Wind at mast height. [m/s]</summary>
    public double Wind_m_s { get; init; } = 2.0;

    /// <summary>Relative humidity over water, from which the dew point follows.</summary>
    public double RelativeHumidity_frac { get; init; } = 0.75;

    /// <summary>Cloud cover, 0 to 1.</summary>
    public double Cloud_frac { get; init; } = 0.5;

    /// <summary>Global horizontal irradiance. [W/m²]</summary>
    public double Sun_W_m2 { get; init; }
}
