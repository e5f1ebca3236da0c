namespace ColdSim.Model.Weather;

/// <summary>The weather at one instant, ready for the step loop. SI units.</summary>
/// <param name="Air_K">Air temperature. [K]</param>
/// <param name="Wind_m_s">Wind at mast height. [m/s]</param>
/// <param name="VapourPressure_Pa">Water vapour in the air. [Pa]</param>
/// <param name="Sky_K">Effective temperature of the sky. [K]</param>
/// <param name="Pressure_Pa">Air pressure. [Pa]</param>
/// <param name="WindowSun_W_m2">Sun on vertical windows, mean of four sides. [W/m²]</param>
/// <param name="CylinderSun_W_m2">Sun on an upright cylinder's wall, mean all round. [W/m²]</param>
/// <param name="LevelSun_W_m2">Sun on level ground: the weather's, or by sky and cloud where it does not say. [W/m²]</param>
public readonly record struct WeatherSample(
    double Air_K,
    double Wind_m_s,
    double VapourPressure_Pa,
    double Sky_K,
    double Pressure_Pa,
    double WindowSun_W_m2,
    double CylinderSun_W_m2,
    double LevelSun_W_m2 = 0);
