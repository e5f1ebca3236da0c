using ColdSim.Files.Quantities;
using ColdSim.Model.Site;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[place]</c>: where it stands.</summary>
internal static class PlaceSection
{
    private static readonly QuantityKey Elevation = new("elevation", Dimension.Length, "-430 m", "6,000 m");
    private static readonly QuantityKey GroundAlbedo = new("ground_albedo", Dimension.Ratio, "0", "1");

    public static SiteSpecification Read(SectionReader section)
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
        else if (!section.Has("latitude"))
        {
            section.Reading.Assume($"place: no latitude and longitude, so the sun's direction is not known");
        }
        SiteSpecification site = new()
        {
            Name = section.Text("name") ?? defaults.Name,
            Elevation_m = section.GetOrAssume(Elevation, defaults.Elevation_m, $"place: elevation not given, taken as sea level"),
            Hookup = section.Flag("hookup") ?? defaults.Hookup,
            Latitude_deg = latitude,
            Longitude_deg = longitude,
            GroundAlbedo_frac = section.Get(GroundAlbedo, defaults.GroundAlbedo_frac),
        };
        section.Finish();
        return site;
    }
}
