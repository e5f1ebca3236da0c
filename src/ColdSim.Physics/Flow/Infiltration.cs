namespace ColdSim.Physics.Flow;

/// <summary>Outside air that leaks in through the cracks of a one-storey shell.</summary>
/// <remarks>
/// Source: ASHRAE Handbook of Fundamentals, basic model (Sherman and Grimsrud 1980) and enhanced model (AIM-2, Walker and
/// Wilson 1998). Made for houses; a coach is lower, so the stack part is on the high side.
/// </remarks>
public static class Infiltration
{
    private static readonly double[] BasicWind = [0, 0.000319, 0.000246, 0.000174, 0.000104, 0.000032];
    private static readonly double[] EnhancedShelter = [0, 1.00, 0.90, 0.70, 0.50, 0.30];

    private const double BasicStack = 0.000145;
    private const double EnhancedStack = 0.054;
    private const double EnhancedWindOverCrawlSpace = 0.128;

    /// <summary>Basic model, m³/s: (A/1000) √(Cs |ΔT| + Cw v²).</summary>
    /// <param name="leakageArea_cm2">Effective leakage area at 4 Pa, 0 to 10 000 cm².</param>
    /// <param name="dT_K">Inside less outside temperature, -150 to 150 K; its sign does not matter.</param>
    /// <param name="wind_m_s">Wind at the weather station, 10 m up in the open, 0 to 100 m/s. The shelter is in the coefficient already.</param>
    /// <param name="shelter">How the near surroundings break the wind.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Basic_m3_s(double leakageArea_cm2, double dT_K, double wind_m_s, ShelterClass shelter)
    {
        Require.InRange(leakageArea_cm2, 0, 10_000, "cm²");
        Require.InRange(dT_K, -150, 150, "K");
        Require.InRange(wind_m_s, 0, 100, "m/s");
        return leakageArea_cm2 / 1_000 * Math.Sqrt((BasicStack * Math.Abs(dT_K)) + (Of(BasicWind, shelter) * wind_m_s * wind_m_s));
    }

    /// <summary>Enhanced model, m³/s, for a floor over open air and no flue drawing on the room: √((c Cs ΔT^n)² + (c Cw (s v)^(2n))²).</summary>
    /// <param name="flowCoefficient_m3_sPan">Flow coefficient c of the shell from a pressure test, m³/(s Paⁿ), 0 to 10.</param>
    /// <param name="pressureExponent">Exponent n, 0.5 to 1; 0.67 where not measured.</param>
    /// <param name="dT_K">Inside less outside temperature, -150 to 150 K; its sign does not matter.</param>
    /// <param name="eaveWind_m_s">Wind at eave height, before shelter, 0 to 100 m/s: see <see cref="WindProfile"/>.</param>
    /// <param name="shelter">How the near surroundings break the wind.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Enhanced_m3_s(
        double flowCoefficient_m3_sPan, double pressureExponent, double dT_K, double eaveWind_m_s, ShelterClass shelter)
    {
        Require.InRange(flowCoefficient_m3_sPan, 0, 10, "m³/(s Paⁿ)");
        Require.InRange(pressureExponent, 0.5, 1, "(exponent)");
        Require.InRange(dT_K, -150, 150, "K");
        Require.InRange(eaveWind_m_s, 0, 100, "m/s");
        double stack = EnhancedStack * Math.Pow(Math.Abs(dT_K), pressureExponent);
        double wind = EnhancedWindOverCrawlSpace * Math.Pow(Of(EnhancedShelter, shelter) * eaveWind_m_s, 2 * pressureExponent);
        return flowCoefficient_m3_sPan * Math.Sqrt((stack * stack) + (wind * wind));
    }

    /// <summary>Flow coefficient c, m³/(s Paⁿ), of a shell whose effective leakage area at 4 Pa is known.</summary>
    /// <remarks>The area is that of a nozzle passing the same flow at 4 Pa: A √(2 · 4/ρ) = c 4ⁿ.</remarks>
    /// <param name="leakageArea_cm2">Effective leakage area at 4 Pa, 0 to 10 000 cm².</param>
    /// <param name="pressureExponent">Exponent n, 0.5 to 1.</param>
    /// <param name="airDensity_kg_m3">Density of the air, 0.5 to 2 kg/m³; 1.2 by convention.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double FlowCoefficient_m3_sPan(double leakageArea_cm2, double pressureExponent, double airDensity_kg_m3)
        => Require.InRange(leakageArea_cm2, 0, 10_000, "cm²") * 1e-4
            * Math.Sqrt(8 / Require.InRange(airDensity_kg_m3, 0.5, 2, "kg/m³"))
            / Math.Pow(4, Require.InRange(pressureExponent, 0.5, 1, "(exponent)"));

    private static double Of(double[] coefficients, ShelterClass shelter)
        => shelter is >= ShelterClass.None and <= ShelterClass.Adjacent
            ? coefficients[(int)shelter]
            : throw new ArgumentOutOfRangeException(nameof(shelter), shelter, "Must be class 1 to 5.");
}
