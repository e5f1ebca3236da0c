namespace ColdSim.Physics.SunAndSky;

/// <summary>Sunshine under a clear sky, from the sun's height alone.</summary>
/// <remarks>
/// Source: Haurwitz 1945, with the constants of pvlib. Some books print 0.057 for 0.059, 0.2 % at a high sun and 2 % at 5°.
/// Knows nothing of haze, elevation or the horizon. No checks.
/// </remarks>
public static class ClearSky
{
    /// <summary>Global irradiance on a level surface, W/m²; 0 when the sun is down.</summary>
    /// <param name="cosZenith">Cosine of the sun's zenith angle.</param>
    public static double Haurwitz_W_m2(double cosZenith) => cosZenith > 0 ? 1098 * cosZenith * Math.Exp(-0.059 / cosZenith) : 0;
}
