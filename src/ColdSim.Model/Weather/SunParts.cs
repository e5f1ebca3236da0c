using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Weather;

/// <summary>Parts the sun on level ground into beam and diffuse light, by Erbs' correlation.</summary>
/// <remarks>With the sun under three degrees, where dividing by its sine means nothing, all of it counts as diffuse.</remarks>
public static class SunParts
{
    private static readonly double LowestAltitude_rad = double.DegreesToRadians(3);

    /// <summary>Whether the sun stands high enough for a beam to be told apart.</summary>
    /// <param name="sun">Where it stands.</param>
    public static bool HasBeam(SunAngles sun) => sun.Altitude_rad >= LowestAltitude_rad;

    /// <summary>Beam square to the sun and diffuse on level ground. [W/m²]</summary>
    /// <param name="level_W_m2">Global irradiance on level ground. [W/m²]</param>
    /// <param name="sun">Where the sun stands.</param>
    /// <param name="dayOfYear">Day of the year in UTC.</param>
    public static (double Beam_W_m2, double Diffuse_W_m2) Of(double level_W_m2, SunAngles sun, int dayOfYear)
    {
        if (!HasBeam(sun)) return (0, level_W_m2);
        double sine = Math.Sin(sun.Altitude_rad);
        double clearness = Math.Min(1, level_W_m2 / Extraterrestrial.Horizontal_W_m2(dayOfYear, sine));
        double diffuse = level_W_m2 * DiffuseFraction.Erbs(clearness);
        return ((level_W_m2 - diffuse) / sine, diffuse);
    }
}
