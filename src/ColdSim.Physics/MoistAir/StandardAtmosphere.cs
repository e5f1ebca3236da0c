using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Physics.MoistAir;

/// <summary>Pressure of the standard atmosphere by elevation.</summary>
/// <remarks>Source: ASHRAE Handbook of Fundamentals, after the US Standard Atmosphere (1976) below its tropopause.</remarks>
internal static class StandardAtmosphere
{
    /// <summary>Pressure at sea level, Pa.</summary>
    public const double SeaLevel_Pa = StandardAtmosphere_Pa;

    /// <summary>Lowest elevation, m.</summary>
    public const double Min_m = -5_000;

    /// <summary>Highest elevation, m.</summary>
    public const double Max_m = 11_000;

    /// <summary>Pressure, Pa, at an elevation of -5000 to 11 000 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Elevation outside the range.</exception>
    public static double Pressure_Pa(double elevation_m)
        => SeaLevel_Pa * Math.Pow(1 - (2.25577e-5 * Require.InRange(elevation_m, Min_m, Max_m, "m")), 5.2559);
}
