using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.MoistAir;

/// <summary>Short saturation formulas for the inner loop: one exponential each, no checks.</summary>
/// <remarks>
/// Source: Alduchov and Eskridge 1996, fitted for -40..50 °C over water and -80..0 °C over ice.
/// Against <see cref="SaturationVapour"/>: water within 0.43 % from -40 to 40 °C, ice within 0.13 % from -70 to 0 °C.
/// </remarks>
internal static class MagnusFormula
{
    /// <summary>Saturation pressure over liquid water, Pa, at <paramref name="t_K"/> in 233..323 K.</summary>
    public static double OverWater_Pa(double t_K)
    {
        double t_C = t_K - ZeroCelsius_K;
        return 610.94 * Math.Exp(17.625 * t_C / (243.04 + t_C));
    }

    /// <summary>Saturation pressure over ice, Pa, at <paramref name="t_K"/> in 193..273.15 K.</summary>
    public static double OverIce_Pa(double t_K)
    {
        double t_C = t_K - ZeroCelsius_K;
        return 611.21 * Math.Exp(22.587 * t_C / (273.86 + t_C));
    }

    /// <summary>Relative slope of <see cref="OverIce_Pa"/>, 1/K, at <paramref name="t_K"/>; it falls with the square of the offset.</summary>
    public static double OverIceSlope_1_K(double t_K)
    {
        double over_K = OverIceOffset_K(t_K);
        return 22.587 * 273.86 / (over_K * over_K);
    }

    /// <summary>Relative slope of <see cref="OverWater_Pa"/>, 1/K, at <paramref name="t_K"/>; it falls with the square of the offset.</summary>
    public static double OverWaterSlope_1_K(double t_K)
    {
        double over_K = OverWaterOffset_K(t_K);
        return 17.625 * 243.04 / (over_K * over_K);
    }

    /// <summary>How far a temperature is from the pole of <see cref="OverIce_Pa"/>, K.</summary>
    public static double OverIceOffset_K(double t_K) => 273.86 + t_K - ZeroCelsius_K;

    /// <summary>How far a temperature is from the pole of <see cref="OverWater_Pa"/>, K.</summary>
    public static double OverWaterOffset_K(double t_K) => 243.04 + t_K - ZeroCelsius_K;

    /// <summary>Dew point over water, K: the exact inverse of <see cref="OverWater_Pa"/>, for a pressure above zero.</summary>
    public static double DewPoint_K(double vapourPressure_Pa)
    {
        double x = Math.Log(vapourPressure_Pa / 610.94);
        return ZeroCelsius_K + (243.04 * x / (17.625 - x));
    }
}
