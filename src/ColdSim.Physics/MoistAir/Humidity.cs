namespace ColdSim.Physics.MoistAir;

/// <summary>Water vapour in air: its pressure by relative humidity, its density, and the density of the moist air.</summary>
/// <remarks>Ideal gases; the enhancement factor of moist air (0.5 % at sea level) is left out, as in ASHRAE's hand formulas.</remarks>
internal static class Humidity
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

    /// <summary>Vapour density, kg/m³, of vapour at <paramref name="vapourPressure_Pa"/> and <paramref name="t_K"/>; no checks.</summary>
    public static double VapourDensity_kg_m3(double vapourPressure_Pa, double t_K)
        => vapourPressure_Pa / (VapourGasConstant_J_kgK * t_K);

    /// <summary>Density of air with water vapour in it, kg/m³; no checks.</summary>
    /// <remarks>Ideal mixture: a mole of vapour in place of a mole of air is lighter by 1 - 0.621945.</remarks>
    /// <param name="t_K">Temperature, K.</param>
    /// <param name="p_Pa">Total pressure, Pa.</param>
    /// <param name="vapourPressure_Pa">Vapour pressure, Pa, part of the total.</param>
    public static double MoistAirDensity_kg_m3(double t_K, double p_Pa, double vapourPressure_Pa)
        => DryAir.Density_kg_m3(t_K, p_Pa - ((1 - MolarMassRatio) * vapourPressure_Pa));
}
