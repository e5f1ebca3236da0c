using ColdSim.Files.Quantities;
using ColdSim.Files.Weather;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The keys of <c>[weather]</c> that carry the weather from where it was measured to where the coach stands.</summary>
internal sealed record ShiftKeys(PlaceShift Shift, bool Lapse)
{
    private const double WorthSaying_m = 100;

    private static readonly QuantityKey StationElevation = new("station_elevation", Dimension.Length, "-430 m", "6,000 m");
    private static readonly QuantityKey WindHeight = new("wind_height", Dimension.Length, "0.5 m", "200 m");
    private static readonly QuantityKey Hollow = new("hollow", Dimension.TemperatureDifference, "0 K", "20 K");
    private static readonly QuantityKey HollowCalm = new("hollow_calm", Dimension.Speed, "0 m/s", "10 m/s");

    public static ShiftKeys Read(SectionReader section)
    {
        PlaceShift none = new();
        double? lapse_K_km = section.Number("lapse", -10, 15);
        return new ShiftKeys(
            new PlaceShift
            {
                StationElevation_m = section.Get(StationElevation),
                Lapse_K_m = lapse_K_km / 1000 ?? none.Lapse_K_m,
                WindHeight_m = section.Get(WindHeight),
                WindTerrain = section.Choice("wind_terrain", ("water", Terrain.OpenWater), ("open", Terrain.Open), ("wooded", Terrain.Wooded), ("city", Terrain.City)) ?? none.WindTerrain,
                HollowDrop_K = section.Get(Hollow, 0),
                HollowCalm_m_s = section.Get(HollowCalm, none.HollowCalm_m_s),
            },
            section.Has("lapse"));
    }

    /// <summary>The rows as they are at the place; what was done is assumed aloud.</summary>
    public IReadOnlyList<WeatherRow> Apply(SectionReader section, WeatherResult weather, WeatherDefaults standIns, SiteSpecification site)
    {
        PlaceShift shift = Shift;
        if (shift.StationElevation_m is null && weather.Station.Elevation_m is { } own_m)
        {
            if (Lapse)
                shift = shift with { StationElevation_m = own_m };
            else if (Math.Abs(own_m - site.Elevation_m) > WorthSaying_m)
                section.Reading.Warn($"weather: the station stands at {own_m:0} m and the place at {site.Elevation_m:0} m; 'station_elevation' or 'lapse' would shift the temperature");
        }
        else if (Lapse && shift.StationElevation_m is null)
        {
            section.Report("lapse", "'lapse' without the station's elevation, which the file does not tell", "accepted: 'station_elevation' beside it");
        }
        if (shift.HollowDrop_K > 0 && site.Latitude_deg is null)
        {
            section.Report("hollow", "'hollow' needs to know when the sun sets", "accepted: latitude and longitude under [place]");
            return weather.Rows;
        }
        IReadOnlyList<WeatherRow> rows = shift.Apply(weather.Rows, site, standIns.Wind_m_s, out IReadOnlyList<string> notes);
        section.Reading.Assumptions.AddRange(notes);
        return rows;
    }
}
