namespace ColdSim.Physics.Flow;

/// <summary>Outside air that goes through openings of a box at two heights, by the weight of its air and by wind.</summary>
/// <remarks>
/// Sources: British Standard 5925 and ASHRAE Handbook of Fundamentals, natural ventilation: two openings in series by the orifice law, a discharge coefficient of 0.61,
/// and wind on the openings of one side. Together as the root of the sum of squares (ASHRAE). No checks.
/// </remarks>
internal static class Openings
{
    /// <summary>Discharge coefficient of a sharp-edged opening.</summary>
    public const double Discharge = 0.61;

    /// <summary>Air through openings of one side per their area and wind.</summary>
    public const double OneSidedWind = 0.025;

    private const double Gravity_m_s2 = 9.80665;

    /// <summary>Air that warmer or colder air inside drives: C A √(2 g h |ΔT|/T), with 1/A² = 1/A₁² + 1/A₂² and T the mean. [m³/s]</summary>
    /// <param name="low_m2">Lower opening, at least 0. [m²]</param>
    /// <param name="high_m2">Upper opening, at least 0. [m²]</param>
    /// <param name="height_m">Height between their middles, at least 0. [m]</param>
    /// <param name="inside_K">Air inside. [K]</param>
    /// <param name="outside_K">Air outside. [K]</param>
    public static double Stack_m3_s(double low_m2, double high_m2, double height_m, double inside_K, double outside_K)
    {
        if (low_m2 <= 0 || high_m2 <= 0) return 0;
        double series_m2 = low_m2 * high_m2 / Math.Sqrt(low_m2 * low_m2 + high_m2 * high_m2);
        return Discharge * series_m2 * Math.Sqrt(4 * Gravity_m_s2 * height_m * Math.Abs(inside_K - outside_K) / (inside_K + outside_K));
    }

    /// <summary>Air that wind drives through openings of one side: 0.025 A v. [m³/s]</summary>
    /// <param name="area_m2">All of them, at least 0. [m²]</param>
    /// <param name="wind_m_s">Wind at the box, at least 0. [m/s]</param>
    public static double Wind_m3_s(double area_m2, double wind_m_s) => OneSidedWind * area_m2 * wind_m_s;

    /// <summary>Both together. [m³/s]</summary>
    /// <param name="stack_m3_s">By the weight of the air. [m³/s]</param>
    /// <param name="wind_m3_s">By wind. [m³/s]</param>
    public static double Both_m3_s(double stack_m3_s, double wind_m3_s) => Math.Sqrt(stack_m3_s * stack_m3_s + wind_m3_s * wind_m3_s);
}
