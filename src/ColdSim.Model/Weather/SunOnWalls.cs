using ColdSim.Model.Site;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Weather;

/// <summary>Sun on upright walls from the sun on level ground.</summary>
/// <remarks>
/// With a position, the global irradiance is split by Erbs' correlation and projected with the sun's place in the sky and an isotropic
/// sky. Which way windows face is not known, so the mean of north, east, south and west is taken. Without a position, or with the
/// sun under three degrees, where dividing by its sine means nothing, all of it counts as diffuse.
/// </remarks>
internal static class SunOnWalls
{
    /// <summary>Irradiance on windows and on an upright cylinder. [W/m²]</summary>
    public static (double Windows_W_m2, double Cylinder_W_m2) From(double global_W_m2, DateTimeOffset time, SiteSpecification site)
    {
        if (global_W_m2 <= 0) return (0, 0);
        double albedo = site.GroundAlbedo_frac;
        if (site is not { Latitude_deg: double latitude, Longitude_deg: double longitude })
            return Diffuse(global_W_m2, albedo);

        DateTimeOffset utc = time.ToUniversalTime();
        int days = DateTime.IsLeapYear(utc.Year) ? 366 : 365;
        SunAngles sun = SunPosition.At(utc.DayOfYear, days, utc.TimeOfDay.TotalHours, latitude, longitude);
        if (!SunParts.HasBeam(sun)) return Diffuse(global_W_m2, albedo);

        (double beam, double diffuse) = SunParts.Of(global_W_m2, sun, utc.DayOfYear);
        double windows = 0;
        for (int side = 0; side < 4; side++)
            windows += TiltedSurface.Irradiance_W_m2(beam, diffuse, global_W_m2, sun, Math.PI / 2, side * Math.PI / 2, albedo) / 4;
        return (windows, VerticalCylinder.MeanIrradiance_W_m2(beam, diffuse, global_W_m2, sun.Altitude_rad, albedo));
    }

    private static (double, double) Diffuse(double global_W_m2, double albedo)
    {
        double half = global_W_m2 * 0.5 * (1 + albedo);
        return (half, half);
    }
}
