namespace ColdSim.Physics.MoistAir;

/// <summary>Turns relative humidity, vapour pressure, humidity ratio and vapour density into one another.</summary>
/// <remarks>Ideal gases; the enhancement factor of moist air (0.5 % at sea level) is left out, as in ASHRAE's hand formulas.</remarks>
public static class Humidity
{
    /// <summary>Ratio of the molar masses of water and dry air (ASHRAE Handbook of Fundamentals).</summary>
    public const double MolarMassRatio = 0.621945;

    /// <summary>Gas constant of water vapour, J/(kg K).</summary>
    public const double VapourGasConstant_J_kgK = 461.523;

    /// <summary>Vapour pressure, Pa, of air whose relative humidity is over water, as weather services report it.</summary>
    /// <param name="t_K">Air temperature, 173.15 to 473.15 K.</param>
    /// <param name="relativeHumidity_frac">Relative humidity over water, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double VapourPressure_Pa(double t_K, double relativeHumidity_frac)
        => Require.InRange(relativeHumidity_frac, 0, 1, "(fraction)") * SaturationVapour.PressureOverWater_Pa(t_K);

    /// <summary>Relative humidity over water, as a fraction; above 1 where the air is supersaturated.</summary>
    /// <param name="t_K">Air temperature, 173.15 to 473.15 K.</param>
    /// <param name="vapourPressure_Pa">Vapour pressure, 0 to 2e6 Pa.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Relative_frac(double t_K, double vapourPressure_Pa)
        => Require.InRange(vapourPressure_Pa, 0, 2e6, "Pa") / SaturationVapour.PressureOverWater_Pa(t_K);

    /// <summary>Humidity ratio, kg of vapour per kg of dry air.</summary>
    /// <param name="vapourPressure_Pa">Vapour pressure, from 0 to half the air pressure.</param>
    /// <param name="pressure_Pa">Air pressure, 10 000 to 120 000 Pa.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double HumidityRatio(double vapourPressure_Pa, double pressure_Pa)
    {
        Require.InRange(pressure_Pa, 10_000, 120_000, "Pa");

        // Half the pressure is far beyond any weather; nearer to it the ratio runs away.
        Require.InRange(vapourPressure_Pa, 0, 0.5 * pressure_Pa, "Pa");
        return MolarMassRatio * vapourPressure_Pa / (pressure_Pa - vapourPressure_Pa);
    }

    /// <summary>Vapour density, kg/m³, of vapour at <paramref name="vapourPressure_Pa"/> and <paramref name="t_K"/>; no checks.</summary>
    public static double VapourDensity_kg_m3(double vapourPressure_Pa, double t_K)
        => vapourPressure_Pa / (VapourGasConstant_J_kgK * t_K);
}
