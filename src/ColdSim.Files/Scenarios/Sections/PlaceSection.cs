using System.Globalization;
using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Weather;
using ColdSim.Model.Site;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[place]</c>: where the coach is.</summary>
internal static class PlaceSection
{
    private static readonly SiteSpecification Usual = new();

    private static readonly TextKey Name = new("name", KeyDefault.None, "what the place is called, for the report") { Such = "Trailhead" };

    private static readonly TextKey CountryKey = new("country", KeyDefault.Of("by the units of the answer"), "two letters, such as DE: rules of the United States are quoted in US only")
    {
        Accepts = "two letters of ISO 3166",
        Such = "US",
        FixedForOptions = true,
    };

    private static readonly UsualRange HabitableHeight = new(null, "3,700 m", UnusualValue.FromMemory) { Hint = " (12,000 ft); feet are written ft" };

    private static readonly QuantityKey Elevation = new(
        "elevation", Dimension.Length, "-430 m", "6,000 m", KeyDefault.Of("the weather file's, else sea level"),
        "height above the sea: air pressure, and the furnace's input")
    {
        Assumed = ScenarioKey.NotGiven,
        Usual = HabitableHeight,
    };

    private static readonly NumberKey Latitude = new("latitude", -90, 90, KeyDefault.Of("the weather file's"), "north positive; together with `longitude`")
    {
        Unit = "degrees",
        Comment = "degrees, north positive",
        GoesWith = ["longitude"],
        Assumed = "{who}: no latitude and longitude, so the sun's direction is not known",
    };

    private static readonly NumberKey Longitude = new("longitude", -180, 180, KeyDefault.Of("the weather file's"), "east positive")
    {
        Unit = "degrees",
        Comment = "degrees, east positive",
        GoesWith = ["latitude"],
    };

    private static readonly FlagKey Hookup = new("hookup", Usual.Hookup, "whether there is shore power");

    private static readonly QuantityKey Breaker = new(
        "breaker", Dimension.Power, "100 W", "30 kW", KeyDefault.Of(Usual.Breaker_W, "W"),
        "what the hookup's breaker carries without end: an electric `[[heater]]` gets what the rest leaves");

    private static readonly QuantityKey GroundAlbedo = new(
        "ground_albedo", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.GroundAlbedo_frac, "", "snow"), "part of the sun that the ground throws back");

    public static readonly ScenarioSection Declared = new(
        "place", TableForm.One, "where the coach is", [Name, CountryKey, Elevation, Latitude, Longitude, Hookup, Breaker, GroundAlbedo]);

    /// <summary>The keys of a place that a stop has too, with the place's values where the stop does not say them.</summary>
    public static class OfStop
    {
        private static readonly KeyDefault Places = KeyDefault.Of("`[place]`'s");
        private static readonly KeyDefault PlacesOrFiles = KeyDefault.Of("`[place]`'s, else its weather file's");

        public static readonly QuantityKey Elevation = new("elevation", Dimension.Length, "-430 m", "6,000 m", PlacesOrFiles, "height above the sea")
        {
            Usual = HabitableHeight,
        };

        public static readonly NumberKey Latitude = new("latitude", -90, 90, PlacesOrFiles, PlaceSection.Latitude.Meaning)
        {
            Unit = PlaceSection.Latitude.Unit,
            GoesWith = PlaceSection.Latitude.GoesWith,
        };

        public static readonly NumberKey Longitude = new("longitude", -180, 180, PlacesOrFiles, PlaceSection.Longitude.Meaning)
        {
            Unit = PlaceSection.Longitude.Unit,
            GoesWith = PlaceSection.Longitude.GoesWith,
        };

        public static readonly FlagKey Hookup = new("hookup", Places, PlaceSection.Hookup.Meaning);

        public static readonly QuantityKey GroundAlbedo = new("ground_albedo", Dimension.Ratio, "0", "1", Places, PlaceSection.GroundAlbedo.Meaning);
    }

    /// <summary>Reads the table.</summary>
    /// <param name="section">The table.</param>
    public static GivenPlace Read(SectionReader section)
    {
        (double? latitude, double? longitude) = Position(section, Latitude, Longitude);
        SiteSpecification site = new()
        {
            Name = section.Get(Name) ?? Usual.Name,
            Elevation_m = section.Get(Elevation, Usual.Elevation_m),
            Hookup = section.GetOrDefault(Hookup),
            Breaker_W = section.GetOrDefault(Breaker),
            Latitude_deg = latitude,
            Longitude_deg = longitude,
            GroundAlbedo_frac = section.GetOrDefault(GroundAlbedo),
        };
        section.Finish();
        return new(site, section.Has(Elevation));
    }

    /// <summary>What of a place comes from its weather or is assumed, a line each.</summary>
    /// <param name="who">Whose place it is.</param>
    /// <param name="given">What the scenario gives.</param>
    /// <param name="station">Where the weather is from.</param>
    public static IEnumerable<string> FromWeather(string who, GivenPlace given, WeatherStation station)
    {
        if (!given.HasPosition)
        {
            yield return station is { Latitude_deg: { } latitude, Longitude_deg: { } longitude }
                ? string.Create(CultureInfo.InvariantCulture, $"{who}: position {latitude:0.##}, {longitude:0.##}, as the weather file says")
                : Latitude.AssumedAs(who, null);
        }

        if (!given.HasElevation)
        {
            yield return station.Elevation_m is { } elevation_m
                ? string.Create(CultureInfo.InvariantCulture, $"{who}: elevation {elevation_m:0} m, as the weather file says")
                : Elevation.AssumedAs(who, "sea level");
        }
    }

    /// <summary>The country as two capital letters; null where it is absent or faulty.</summary>
    public static string? Country(SectionReader section)
    {
        if (section.Get(CountryKey)?.Trim() is not { } country)
            return null;
        if (country.Length == 2 && country.All(char.IsAsciiLetter))
            return country.ToUpperInvariant();
        section.Reading.Report(section.ValuePlace(CountryKey), $"'{CountryKey.Name}' is \"{Quote.Of(country)}\"", "accepted: two letters, such as \"US\", \"CA\" or \"DE\"");
        return null;
    }

    /// <summary>Latitude and longitude, which go together.</summary>
    public static (double? Latitude_deg, double? Longitude_deg) Position(SectionReader section, NumberKey latitude, NumberKey longitude)
    {
        double? latitude_deg = section.Get(latitude), longitude_deg = section.Get(longitude);
        if (section.Has(latitude) != section.Has(longitude))
        {
            section.Reading.Missing(
                section.PlaceOf(section.Has(latitude) ? latitude : longitude), "latitude and longitude belong together", "accepted: both or neither");
        }
        return (latitude_deg, longitude_deg);
    }
}
