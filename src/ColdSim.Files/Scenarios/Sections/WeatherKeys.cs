using ColdSim.Files.Quantities;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Weather;
using ColdSim.Model.Weather;
using ColdSim.Physics.Flow;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary>The keys of <c>[weather]</c>.</summary>
internal static class WeatherKeys
{
    /// <summary>What is said of a column that is assumed.</summary>
    public const string NotInFile = "{key}: not in the weather file; assumed {value}";

    /// <summary>The same of days.</summary>
    public const string NotInDays = "{key}: not given for the days; assumed {value}";

    private static readonly WeatherDefaults Usual = new();
    private static readonly PlaceShift NoShift = new();

    public static readonly TextKey File = new(
        "file", KeyDefault.Of("needed, or days"),
        "the weather file, relative to the scenario's folder: [our CSV](weather-csv.md) or [one that can be had elsewhere](weather-formats.md), packed with gzip or not")
    {
        Such = "weather.csv",
        Comment = "beside this file; its columns are described in docs/weather-csv.md",
        FixedForOptions = true,
    };

    public static readonly ChoiceKey<WeatherFormat> Format = new(
        "format", KeyDefault.Of("recognised"), "the file's layout, where looking at it is not enough", WeatherFormatNames.Chosen)
    { FixedForOptions = true };

    public static readonly TextKey OffsetKey = new(
        "offset", KeyDefault.None,
        "offset from UTC, such as `\"-07:00\"`, of times that are written without one; the clock that times in UTC are shown by")
    {
        Accepts = "-14:00 to +14:00",
        Such = "-07:00",
        FixedForOptions = true,
    };

    public static readonly DateTimeKey From = new(
        "from", DateTimeForm.DateAtLeast, KeyDefault.Of("the file's first row"),
        "rows before it are passed over while reading; without offset by the file's own clock")
    { FixedForOptions = true };

    public static readonly DateTimeKey To = new(
        "to", DateTimeForm.DateAtLeast, KeyDefault.Of("the file's last row"), "rows after it likewise; a date alone means its end")
    { FixedForOptions = true };

    public static readonly QuantityKey Bridge = new(
        "bridge", Dimension.Duration, "3 h", "31 d", KeyDefault.Of(WeatherGaps.Longest.TotalSeconds, "h"),
        "the longest gap between rows that a straight line may bridge; every gap is noted")
    { FixedForOptions = true };

    public static readonly WholeKey Year = new(
        "year", 1900, 2200, KeyDefault.Of("one that fits"), "the year that a typical year (EPW, TMY3) is put on")
    { FixedForOptions = true };

    public static readonly QuantityKey StationElevation = new(
        "station_elevation", Dimension.Length, "-430 m", "6,000 m", KeyDefault.None,
        "where the weather was measured, if the file does not say it or is wrong: shifts temperature and pressure from there to the `elevation` under `[place]`");

    public static readonly NumberKey Lapse = new(
        "lapse", -10, 15, KeyDefault.Of(1000 * NoShift.Lapse_K_m),
        "how much colder it is a kilometre up; alone, shifts from the elevation that the file has to the one under `[place]`")
    { Unit = "K per km" };

    public static readonly QuantityKey WindHeight = new(
        "wind_height", Dimension.Length, "0.5 m", "200 m", KeyDefault.Of("10 m"),
        "height above ground at which the wind was measured; brought to 10 m in the open, no further");

    public static readonly ChoiceKey<Terrain> WindTerrain = new(
        "wind_terrain", NoShift.WindTerrain, "the country round the anemometer",
        ("water", Terrain.OpenWater), ("open", Terrain.Open), ("wooded", Terrain.Wooded), ("city", Terrain.City));

    public static readonly QuantityKey Hollow = new(
        "hollow", Dimension.TemperatureDifference, "0 K", "20 K", KeyDefault.Of(NoShift.HollowDrop_K, "K"),
        "how much colder the place is from sunset to sunrise of calm nights; needs `latitude` and `longitude`");

    public static readonly QuantityKey HollowCalm = new(
        "hollow_calm", Dimension.Speed, "0 m/s", "10 m/s", KeyDefault.Of(NoShift.HollowCalm_m_s, "m/s"), "a night's mean wind up to which it is calm");

    public static readonly QuantityKey Colder = new(
        "colder", Dimension.TemperatureDifference, "-30 K", "30 K", KeyDefault.Of(0, "K"),
        "taken off all air and dew points, those of stops with a weather of their own too; below zero it is warmer");

    public static readonly NumberKey WindFactor = new("wind_factor", 0, 5, KeyDefault.Of(1), "times all wind, that of such stops too");

    public static readonly QuantityKey Wind = new(
        "wind", Dimension.Speed, "0 m/s", "60 m/s", KeyDefault.Of(Usual.Wind_m_s, "m/s"), "used where the file has no wind")
    { Assumed = NotInFile };

    public static readonly QuantityKey Humidity = new(
        "humidity", Dimension.Ratio, "1 %", "100 %", KeyDefault.Of(Usual.RelativeHumidity_frac, "%"),
        "used where the file has no humidity or dew point")
    { Assumed = NotInFile };

    public static readonly QuantityKey Cloud = new(
        "cloud", Dimension.Ratio, "0", "1", KeyDefault.Of(Usual.Cloud_frac, "%"), "used where the file has no cloud")
    { Assumed = NotInFile };

    public static readonly QuantityKey Sun = new(
        "sun", Dimension.Irradiance, "0 W/m²", "1,400 W/m²", KeyDefault.Of(Usual.Sun_W_m2, "W/m²"), "used where the file has no sun")
    { Assumed = NotInFile };

    public static readonly ScenarioSection Declared = new(
        "weather", TableForm.One, "the weather file or the days, how it is carried to the place, and what is used for what it does not have",
        [
            File, Format, OffsetKey, From, To, Bridge, Year, StationElevation, Lapse, WindHeight, WindTerrain, Hollow, HollowCalm, Colder, WindFactor,
            Wind, Humidity, Cloud, Sun,
        ],
        ColumnsSection.Declared,
        WeatherDaysSection.Declared)
    {
        Ways = [[File.Name], [WeatherDaysSection.Declared.Name]],
    };
}
