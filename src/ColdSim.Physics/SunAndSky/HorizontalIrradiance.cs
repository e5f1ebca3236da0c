namespace ColdSim.Physics.SunAndSky;

/// <summary>Irradiance on a level surface: above the atmosphere, under a clear sky, under clouds, and the diffuse part of it. No checks.</summary>
internal static class HorizontalIrradiance
{
    /// <summary>Solar constant, W/m².</summary>
    public const double SolarConstant_W_m2 = 1361;

    /// <summary>Irradiance above the atmosphere square to the sun, W/m².</summary>
    /// <remarks>The one-term correction for the sun's distance of Duffie and Beckman, good to 0.3 %.</remarks>
    /// <param name="dayOfYear">Day of the year, 1 on the first of January.</param>
    public static double ExtraterrestrialNormal_W_m2(int dayOfYear) => SolarConstant_W_m2 * (1 + (0.033 * Math.Cos(Math.Tau * dayOfYear / 365)));

    /// <summary>Irradiance above the atmosphere on a level surface, W/m²; 0 when the sun is down.</summary>
    /// <param name="dayOfYear">Day of the year, 1 on the first of January.</param>
    /// <param name="cosZenith">Cosine of the sun's zenith angle.</param>
    public static double Extraterrestrial_W_m2(int dayOfYear, double cosZenith) => ExtraterrestrialNormal_W_m2(dayOfYear) * Math.Max(0, cosZenith);

    /// <summary>Global irradiance under a clear sky, W/m², from the sun's height alone; 0 when the sun is down.</summary>
    /// <remarks>
    /// Source: Haurwitz 1945, with the constants of pvlib. Some books print 0.057 for 0.059, 0.2 % at a high sun and 2 % at 5°.
    /// Haze, elevation and the horizon are left out.
    /// </remarks>
    /// <param name="cosZenith">Cosine of the sun's zenith angle.</param>
    public static double ClearSky_W_m2(double cosZenith) => cosZenith > 0 ? 1098 * cosZenith * Math.Exp(-0.059 / cosZenith) : 0;

    /// <summary>Global irradiance under clouds, W/m²: clear (1 - 0.75 n^3.4).</summary>
    /// <remarks>Source: Kasten and Czeplak 1980, from ten years at Hamburg: the mean over all kinds of cloud.</remarks>
    /// <param name="clear_W_m2">Global irradiance without clouds, W/m².</param>
    /// <param name="cloud_frac">Part of the sky covered, 0 to 1.</param>
    public static double CloudySky_W_m2(double clear_W_m2, double cloud_frac) => clear_W_m2 * (1 - (0.75 * Math.Pow(cloud_frac, 3.4)));

    /// <summary>Diffuse over global irradiance, 0.1 to 1.</summary>
    /// <remarks>Source: Erbs, Klein and Duffie 1982, for hourly means.</remarks>
    /// <param name="clearness">Clearness index: global irradiance over that above the atmosphere, both level; 0 to 1.</param>
    public static double DiffuseFraction(double clearness)
    {
        double kt = clearness;
        return kt switch
        {
            <= 0.22 => 1 - (0.09 * kt),
            <= 0.80 => 0.9511 + (kt * (-0.1604 + (kt * (4.388 + (kt * (-16.638 + (kt * 12.336))))))),
            _ => 0.165,
        };
    }
}
