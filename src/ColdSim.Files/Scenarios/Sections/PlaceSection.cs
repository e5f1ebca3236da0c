using ColdSim.Files.Quantities;
using ColdSim.Model.Site;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[place]</c>: where it stands.</summary>
internal static class PlaceSection
{
    private static readonly QuantityKey Elevation = new("elevation", Dimension.Length, "-430 m", "6,000 m");
    private static readonly QuantityKey Breaker = new("breaker", Dimension.Power, "100 W", "30 kW");
    private static readonly QuantityKey GroundAlbedo = new("ground_albedo", Dimension.Ratio, "0", "1");

    /// <summary>Reads it.</summary>
    /// <param name="section">The table.</param>
    /// <param name="assume">Whether what is missing is named; where there are stops, they say it.</param>
    public static SiteSpecification Read(SectionReader section, bool assume)
    {
        SiteSpecification defaults = new();
        double? latitude = section.Number("latitude", -90, 90);
        double? longitude = section.Number("longitude", -180, 180);
        if (section.Has("latitude") != section.Has("longitude"))
        {
            section.Reading.Missing(
                section.PlaceOf(section.Has("latitude") ? "latitude" : "longitude"),
                "latitude and longitude belong together", "accepted: both or neither");
        }
        else if (assume && !section.Has("latitude"))
        {
            section.Reading.Assume($"place: no latitude and longitude, so the sun's direction is not known");
        }
        SiteSpecification site = new()
        {
            Name = section.Text("name") ?? defaults.Name,
            Elevation_m = assume
                ? section.GetOrAssume(Elevation, defaults.Elevation_m, $"place: elevation not given, taken as sea level")
                : section.Get(Elevation, defaults.Elevation_m),
            Hookup = section.Flag("hookup") ?? defaults.Hookup,
            Breaker_W = section.Get(Breaker, defaults.Breaker_W),
            Latitude_deg = latitude,
            Longitude_deg = longitude,
            GroundAlbedo_frac = section.Get(GroundAlbedo, defaults.GroundAlbedo_frac),
        };
        section.Finish();
        return site;
    }
}
