namespace ColdSim.Model.Weather;

/// <summary>One row of hourly weather in SI units; what the file does not give is null.</summary>
/// <param name="Time">The instant, with the offset it was written in.</param>
/// <param name="Air_K">Air temperature. [K]</param>
/// <param name="Wind_m_s">Wind at mast height. [m/s]</param>
/// <param name="DewPoint_K">Dew point over water. [K]</param>
/// <param name="Sun_W_m2">Global horizontal irradiance. [W/m²]</param>
/// <param name="Cloud_frac">Cloud cover, 0 to 1.</param>
/// <param name="Pressure_Pa">Station pressure. [Pa]</param>
public readonly record struct WeatherRow(
    DateTimeOffset Time,
    double Air_K,
    double? Wind_m_s = null,
    double? DewPoint_K = null,
    double? Sun_W_m2 = null,
    double? Cloud_frac = null,
    double? Pressure_Pa = null);
