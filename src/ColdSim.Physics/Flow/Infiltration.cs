namespace ColdSim.Physics.Flow;

/// <summary>Outside air that leaks in through the cracks of a one-storey shell.</summary>
/// <remarks>
/// Source: ASHRAE Handbook of Fundamentals, basic model (Sherman and Grimsrud 1980). Made for houses; a coach is lower, so the stack
/// part is on the high side.
/// </remarks>
internal static class Infiltration
{
    private static readonly double[] BasicWind = [0, 0.000319, 0.000246, 0.000174, 0.000104, 0.000032];

    private const double BasicStack = 0.000145;

    /// <summary>Basic model, m³/s: (A/1000) √(Cs |ΔT| + Cw v²).</summary>
    /// <param name="leakageArea_cm2">Effective leakage area at 4 Pa, 0 to 10 000 cm².</param>
    /// <param name="dT_K">Inside less outside temperature, -150 to 150 K; its sign does not matter.</param>
    /// <param name="wind_m_s">Wind at the weather station, 10 m up in the open, 0 to 100 m/s. The shelter is in the coefficient already.</param>
    /// <param name="shelter">How the near surroundings break the wind.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Basic_m3_s(double leakageArea_cm2, double dT_K, double wind_m_s, ShelterClass shelter)
    {
        Require.InRange(dT_K, -150, 150, "K");
        return InWind(leakageArea_cm2, wind_m_s, shelter).At_m3_s(dT_K);
    }

    /// <summary>The basic model at one wind, for many differences of temperature.</summary>
    /// <param name="leakageArea_cm2">Effective leakage area at 4 Pa, 0 to 10 000 cm².</param>
    /// <param name="wind_m_s">Wind at the weather station, 10 m up in the open, 0 to 100 m/s. The shelter is in the coefficient already.</param>
    /// <param name="shelter">How the near surroundings break the wind.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static InfiltrationInWind InWind(double leakageArea_cm2, double wind_m_s, ShelterClass shelter)
    {
        Require.InRange(leakageArea_cm2, 0, 10_000, "cm²");
        Require.InRange(wind_m_s, 0, 100, "m/s");
        double area = leakageArea_cm2 / 1_000;
        return new(area * area * BasicStack, area * Math.Sqrt(Of(BasicWind, shelter)) * wind_m_s);
    }

    private static double Of(double[] coefficients, ShelterClass shelter)
        => shelter is >= ShelterClass.None and <= ShelterClass.Adjacent
            ? coefficients[(int)shelter]
            : throw new ArgumentOutOfRangeException(nameof(shelter), shelter, "Must be class 1 to 5.");
}

/// <summary>Infiltration at one wind: √(stack |ΔT| + wind²).</summary>
/// <param name="Stack_m6_s2K">Square of the flow per kelvin of difference. [m⁶/(s²·K)]</param>
/// <param name="Wind_m3_s">Flow of the wind alone, which goes with it. [m³/s]</param>
internal readonly record struct InfiltrationInWind(double Stack_m6_s2K, double Wind_m3_s)
{
    /// <summary>Air that leaks in. [m³/s]</summary>
    /// <param name="dT_K">Inside less outside; its sign does not matter. [K]</param>
    public double At_m3_s(double dT_K) => Math.Sqrt(Stack_m6_s2K * Math.Abs(dT_K) + Wind_m3_s * Wind_m3_s);
}

/// <summary>How the near surroundings break the wind; the numbers are those of the ASHRAE Handbook of Fundamentals.</summary>
public enum ShelterClass
{
    /// <summary>Class 1: no obstacle to the wind, such as a frozen lake or a desert.</summary>
    None = 1,

    /// <summary>Class 2: alone in ordinary country.</summary>
    Isolated = 2,

    /// <summary>Class 3: other buildings, rigs or trees across the road.</summary>
    AcrossTheRoad = 3,

    /// <summary>Class 4: things all round, more than their own height away.</summary>
    Surrounded = 4,

    /// <summary>Class 5: things right beside, closer than their own height.</summary>
    Adjacent = 5,
}
