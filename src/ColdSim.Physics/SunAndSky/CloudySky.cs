namespace ColdSim.Physics.SunAndSky;

/// <summary>Sunshine that clouds let through.</summary>
/// <remarks>Source: Kasten and Czeplak 1980, from ten years at Hamburg: mean over all cloud kinds. No checks.</remarks>
public static class CloudySky
{
    /// <summary>Global irradiance on a level surface, W/m²: clear (1 - 0.75 n^3.4).</summary>
    /// <param name="clear_W_m2">Global irradiance without clouds, W/m².</param>
    /// <param name="cloud_frac">Part of the sky covered, 0 to 1.</param>
    public static double KastenCzeplak_W_m2(double clear_W_m2, double cloud_frac)
        => clear_W_m2 * (1 - (0.75 * Math.Pow(cloud_frac, 3.4)));
}
