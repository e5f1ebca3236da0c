using ColdSim.Model.Site;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Model.Weather;

/// <summary>Sun on level ground where the weather does not say, and where the sun stands.</summary>
public static class GlobalHorizontalIrradiance
{
    /// <summary>Where the sun stands; null where the place is not known.</summary>
    /// <param name="time">The instant.</param>
    /// <param name="site">The place.</param>
    public static SunAngles? Position(DateTimeOffset time, SiteSpecification site)
    {
        if (site is not { Latitude_deg: double latitude, Longitude_deg: double longitude }) return null;
        DateTimeOffset utc = time.ToUniversalTime();
        return SunPosition.At(utc.DayOfYear, DateTime.IsLeapYear(utc.Year) ? 366 : 365, utc.TimeOfDay.TotalHours, latitude, longitude);
    }

    /// <summary>By a clear sky and its clouds; 0 where the place is not known. [W/m²]</summary>
    /// <param name="time">The instant.</param>
    /// <param name="site">The place.</param>
    /// <param name="cloud_frac">Part of the sky covered, 0 to 1.</param>
    public static double BySky_W_m2(DateTimeOffset time, SiteSpecification site, double cloud_frac)
        => Position(time, site) is { } sun ? CloudySky.KastenCzeplak_W_m2(ClearSky.Haurwitz_W_m2(sun.CosZenith), cloud_frac) : 0;
}
