using ColdSim.Model.Site;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Weather;

/// <summary>Global horizontal irradiance at a site: from the sky where the weather has none, its beam and diffuse parts, and what falls on walls.</summary>
internal static class GlobalHorizontalIrradiance
{
    private static readonly double LowestAltitude_rad = double.DegreesToRadians(3);

    /// <summary>Position of the sun; null where the site has no position.</summary>
    /// <param name="time">Instant.</param>
    /// <param name="site">Site, for its position.</param>
    public static SunAngles? Position(DateTimeOffset time, SiteSpecification site)
    {
        if (site is not { Latitude_deg: double latitude, Longitude_deg: double longitude }) return null;
        DateTimeOffset utc = time.ToUniversalTime();
        return SunPosition.At(utc.DayOfYear, DateTime.IsLeapYear(utc.Year) ? 366 : 365, utc.TimeOfDay.TotalHours, latitude, longitude);
    }

    /// <summary>Global horizontal irradiance by the clear sky and its clouds; 0 where the site has no position. [W/m²]</summary>
    /// <param name="time">Instant.</param>
    /// <param name="site">Site, for its position.</param>
    /// <param name="cloud_frac">Part of the sky covered, 0 to 1.</param>
    public static double BySky_W_m2(DateTimeOffset time, SiteSpecification site, double cloud_frac)
        => Position(time, site) is { } sun ? HorizontalIrradiance.CloudySky_W_m2(HorizontalIrradiance.ClearSky_W_m2(sun.CosZenith), cloud_frac) : 0;

    // Under three degrees dividing by the sine of the sun's altitude means nothing, so all light counts as diffuse.
    private static bool HasBeam(SunAngles sun) => sun.Altitude_rad >= LowestAltitude_rad;

    /// <summary>Beam square to the sun and diffuse light on level ground, by Erbs' correlation. [W/m²]</summary>
    /// <remarks>With the sun under three degrees all of it counts as diffuse.</remarks>
    /// <param name="level_W_m2">Global irradiance on level ground. [W/m²]</param>
    /// <param name="sun">Position of the sun.</param>
    /// <param name="dayOfYear">Day of the year in UTC.</param>
    public static (double Beam_W_m2, double Diffuse_W_m2) BeamAndDiffuse_W_m2(double level_W_m2, SunAngles sun, int dayOfYear)
    {
        if (!HasBeam(sun)) return (0, level_W_m2);
        double sine = Math.Sin(sun.Altitude_rad);
        double clearness = Math.Min(1, level_W_m2 / HorizontalIrradiance.Extraterrestrial_W_m2(dayOfYear, sine));
        double diffuse = level_W_m2 * HorizontalIrradiance.DiffuseFraction(clearness);
        return ((level_W_m2 - diffuse) / sine, diffuse);
    }

    /// <summary>Irradiance on windows and on an upright cylinder. [W/m²]</summary>
    /// <remarks>
    /// With a position, global irradiance is split into beam and diffuse light and projected with an isotropic sky. Which way windows face
    /// is not known, so the mean of north, east, south and west counts. Without a position all of it counts as diffuse.
    /// </remarks>
    internal static (double Windows_W_m2, double Cylinder_W_m2) OnWalls_W_m2(double global_W_m2, DateTimeOffset time, SiteSpecification site)
    {
        if (global_W_m2 <= 0) return (0, 0);
        double albedo = site.GroundAlbedo_frac;
        if (Position(time, site) is not { } sun || !HasBeam(sun)) return Diffuse(global_W_m2, albedo);
        (double beam, double diffuse) = BeamAndDiffuse_W_m2(global_W_m2, sun, time.ToUniversalTime().DayOfYear);
        double windows = 0;
        for (int side = 0; side < 4; side++)
            windows += SurfaceIrradiance.Plane_W_m2(beam, diffuse, global_W_m2, sun, Math.PI / 2, side * Math.PI / 2, albedo) / 4;
        return (windows, SurfaceIrradiance.VerticalCylinder_W_m2(beam, diffuse, global_W_m2, sun.Altitude_rad, albedo));
    }

    private static (double, double) Diffuse(double global_W_m2, double albedo)
    {
        double half = global_W_m2 * 0.5 * (1 + albedo);
        return (half, half);
    }
}
