namespace ColdSim.Files.Weather;

/// <summary>The clock of a meridian, which is near a local one where nothing else is known of that.</summary>
internal static class MeridianClock
{
    /// <summary>Its offset from UTC.</summary>
    /// <param name="longitude_deg">East positive. [°]</param>
    public static TimeSpan Of(double longitude_deg) => TimeSpan.FromHours(Math.Round(longitude_deg / 15));
}
