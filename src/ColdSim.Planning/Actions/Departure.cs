using ColdSim.Model.Site;
using ColdSim.Physics.SunAndSky;

namespace ColdSim.Planning.Actions;

/// <summary>By when to leave a place, or to plug in, ahead of a failure that nothing on board prevents.</summary>
internal static class Departure
{
    // Where the site has no position; common practice, no source.
    private const int DayFrom = 8, DayTo = 16;

    /// <summary>The last whole hour of daylight before a failure; the last whole hour where no daylight is left before it.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="failure">When it fails.</param>
    public static DateTimeOffset Before(Scenario scenario, DateTimeOffset failure)
    {
        DateTimeOffset hour = new(failure.Year, failure.Month, failure.Day, failure.Hour, 0, 0, failure.Offset);
        if (hour == failure) hour = hour.AddHours(-1);
        for (DateTimeOffset at = hour; at >= scenario.Start; at = at.AddHours(-1))
        {
            if (IsDaylight(at, SiteAt(scenario, at))) return at;
        }

        return hour < scenario.Start ? scenario.Start : hour;
    }

    private static SiteSpecification SiteAt(Scenario scenario, DateTimeOffset at)
        => scenario.Legs.LastOrDefault(l => l.From <= at)?.Site ?? scenario.Rig.Site;

    private static bool IsDaylight(DateTimeOffset at, SiteSpecification site)
    {
        if (site is not { Latitude_deg: { } latitude, Longitude_deg: { } longitude }) return at.Hour is >= DayFrom and <= DayTo;
        DateTime utc = at.UtcDateTime;
        return SunPosition.At(utc.DayOfYear, DateTime.IsLeapYear(utc.Year) ? 366 : 365, utc.TimeOfDay.TotalHours, latitude, longitude).Altitude_rad > 0;
    }
}
