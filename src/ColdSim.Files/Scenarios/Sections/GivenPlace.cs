using ColdSim.Files.Weather;
using ColdSim.Model.Site;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>A place as the scenario gives it, before it is known what the weather file says of its own.</summary>
/// <param name="Site">What is given.</param>
/// <param name="HasElevation">Whether its height is given; where not, the site's is sea level.</param>
internal sealed record GivenPlace(SiteSpecification Site, bool HasElevation)
{
    /// <summary>Whether its position is given.</summary>
    public bool HasPosition => Site.Latitude_deg is not null;

    /// <summary>The place with the weather's own height and position where the scenario gives none.</summary>
    public SiteSpecification Completed(WeatherStation station) => Site with
    {
        Elevation_m = HasElevation ? Site.Elevation_m : station.Elevation_m ?? Site.Elevation_m,
        Latitude_deg = HasPosition ? Site.Latitude_deg : station.Longitude_deg is null ? null : station.Latitude_deg,
        Longitude_deg = HasPosition ? Site.Longitude_deg : station.Latitude_deg is null ? null : station.Longitude_deg,
    };
}
