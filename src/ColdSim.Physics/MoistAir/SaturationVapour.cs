using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.MoistAir;

/// <summary>Vapour pressure of water over its own flat liquid or ice, and its inverse, the dew point.</summary>
/// <remarks>
/// Source: Hyland and Wexler 1983, in the form and with the constants of the ASHRAE Handbook of Fundamentals.
/// Reported dew points and relative humidities are over water even when it freezes, so the liquid form is
/// used down to 173.15 K although it was fitted from 273.15 K up (supercooled water, extrapolated).
/// </remarks>
internal static class SaturationVapour
{
    /// <summary>Lowest temperature of both forms, K.</summary>
    public const double Min_K = 173.15;

    /// <summary>Highest temperature of the liquid form, K.</summary>
    public const double Max_K = 473.15;

    /// <summary>Highest temperature of the ice form, the triple point, K.</summary>
    public const double MaxIce_K = 273.16;

    /// <summary>Temperature at which <see cref="Pressure_Pa"/> changes from ice to water, K.</summary>
    public const double Freezing_K = ZeroCelsius_K;

    private static readonly double LowestPressure_Pa = Math.Exp(LnPressureOverWater(Min_K));
    private static readonly double HighestPressure_Pa = Math.Exp(LnPressureOverWater(Max_K));

    /// <summary>Saturation pressure over liquid water, Pa.</summary>
    /// <param name="t_K">Temperature, 173.15 to 473.15 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside the range.</exception>
    public static double PressureOverWater_Pa(double t_K)
        => Math.Exp(LnPressureOverWater(Require.InRange(t_K, Min_K, Max_K, "K")));

    /// <summary>Saturation pressure over ice, Pa.</summary>
    /// <param name="t_K">Temperature, 173.15 to 273.16 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside the range.</exception>
    public static double PressureOverIce_Pa(double t_K)
    {
        double t = Require.InRange(t_K, Min_K, MaxIce_K, "K");
        return Math.Exp((-5674.5359 / t) + 6.3925247 + (4.1635019 * Math.Log(t))
            + (t * (-9.677843e-3 + (t * (6.2215701e-7 + (t * (2.0747825e-9 + (t * -9.484024e-13))))))));
    }

    /// <summary>Saturation pressure over what is stable: ice below 273.15 K, water from there on, Pa.</summary>
    /// <param name="t_K">Temperature, 173.15 to 473.15 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside the range.</exception>
    public static double Pressure_Pa(double t_K)
        => t_K < Freezing_K ? PressureOverIce_Pa(t_K) : PressureOverWater_Pa(t_K);

    /// <summary>Dew point over water, K: the inverse of <see cref="PressureOverWater_Pa"/>.</summary>
    /// <param name="vapourPressure_Pa">Vapour pressure, from that at 173.15 K to that at 473.15 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Pressure outside the range.</exception>
    public static double DewPoint_K(double vapourPressure_Pa)
    {
        double lnP = Math.Log(Require.InRange(vapourPressure_Pa, LowestPressure_Pa, HighestPressure_Pa, "Pa"));

        // ln p is nearly linear in 1/T, so Newton in 1/T needs few steps from anywhere in the range.
        double x = 1 / MagnusFormula.DewPoint_K(vapourPressure_Pa);
        for (int i = 0; i < 4; i++)
        {
            double t = 1 / x;
            double slopePerInverse_K = -t * t * LnSlope_1_K(t);
            x += (lnP - LnPressureOverWater(t)) / slopePerInverse_K;
        }

        return 1 / x;
    }

    private static double LnPressureOverWater(double t)
        => (-5800.2206 / t) + 1.3914993 + (6.5459673 * Math.Log(t))
            + (t * (-4.8640239e-2 + (t * (4.1764768e-5 + (t * -1.4452093e-8)))));

    private static double LnSlope_1_K(double t)
        => (5800.2206 / (t * t)) + (6.5459673 / t) - 4.8640239e-2 + (t * ((2 * 4.1764768e-5) - (t * 3 * 1.4452093e-8)));
}
