namespace ColdSim.Physics.SunAndSky;

/// <summary>Sunshine above the atmosphere.</summary>
/// <remarks>Solar constant 1361 W/m² and the one-term distance correction of Duffie and Beckman, good to 0.3 %. No checks.</remarks>
public static class Extraterrestrial
{
    /// <summary>Solar constant, W/m².</summary>
    public const double SolarConstant_W_m2 = 1361;

    /// <summary>Irradiance square to the sun, W/m², on a day of the year (1 on the first of January).</summary>
    public static double Normal_W_m2(int dayOfYear) => SolarConstant_W_m2 * (1 + (0.033 * Math.Cos(Math.Tau * dayOfYear / 365)));

    /// <summary>Irradiance on a level surface, W/m²; 0 when the sun is down.</summary>
    /// <param name="dayOfYear">Day of the year, 1 on the first of January.</param>
    /// <param name="cosZenith">Cosine of the sun's zenith angle.</param>
    public static double Horizontal_W_m2(int dayOfYear, double cosZenith) => Normal_W_m2(dayOfYear) * Math.Max(0, cosZenith);
}
