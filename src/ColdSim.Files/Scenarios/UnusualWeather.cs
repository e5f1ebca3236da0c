using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Weather;
using ColdSim.Model.Site;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;

namespace ColdSim.Files.Scenarios;

/// <summary>A weather file and the place that it is used for.</summary>
/// <param name="Weather">The file.</param>
/// <param name="Site">The place.</param>
/// <param name="IsShifted">Whether its temperature is shifted from the file's height to the place's.</param>
internal sealed record WeatherAtPlace(WeatherResult Weather, SiteSpecification Site, bool IsShifted = false);

/// <summary>What is unusual of a weather file for its place and season.</summary>
/// <remarks>
/// The air's normal is a rough rule by latitude and day of the year, from memory of climate tables, and good to some 8 K; it only has to tell degrees
/// Celsius from degrees Fahrenheit. The file is looked at in blocks of ten days, of which more than half must look wrong.
/// </remarks>
internal static class UnusualWeather
{
    private const double Block_s = 10 * 86_400;
    private const double Far_m = 50_000;
    private const double FarUp_m = 300;

    // What is nearer than this after a change of sign was meant with that sign.
    private const double Meant_m = 300_000;

    // Where no position is known.
    private const double Latitude_deg = 40;

    /// <summary>All that is looked for.</summary>
    public static IReadOnlyList<UnusualValue<WeatherAtPlace>> All { get; } =
    [
        new(
            "air", "under °C, warmer than any place of that latitude and season, or rather warm with swings from day to night of 18 K and more: °F, perhaps",
            "numbers in the unit of the heading", UnusualValue.OurChoice,
            w => w.Weather.AirUnit == "°C" ? InMostBlocks(w, IsFahrenheit, "°C", "°F") : null),
        new(
            "air", "under °F, far colder than the latitude and season, where the same numbers in °C would be near: °C, perhaps",
            "numbers in the unit of the heading", UnusualValue.OurChoice,
            w => w.Weather.AirUnit == "°F" ? InMostBlocks(w, IsCelsius, "°F", "°C") : null),
        new(
            "place.longitude", "the place over 50 km from the weather file's station", "a station within 50 km; east is positive, west negative", UnusualValue.OurChoice,
            FarStation),
        new(
            "place.elevation", "the place over 300 m higher or lower than the weather file's station, and no shift",
            "within 300 m; 'lapse' under [weather] shifts the temperature, 6.5 K a kilometre unless given", UnusualValue.OurChoice,
            HighStation),
    ];

    private static string? FarStation(WeatherAtPlace w)
    {
        if (w is not { Site: { Latitude_deg: { } latitude, Longitude_deg: { } longitude }, Weather.Station: { Latitude_deg: { } stationLatitude, Longitude_deg: { } stationLongitude } })
            return null;
        double away_m = GreatCircle.Distance_m(latitude, longitude, stationLatitude, stationLongitude);
        if (away_m <= Far_m)
            return null;
        string meant = GreatCircle.Distance_m(latitude, -longitude, stationLatitude, stationLongitude) < Meant_m ? "; the sign of the longitude looks wrong, east for west"
            : GreatCircle.Distance_m(-latitude, longitude, stationLatitude, stationLongitude) < Meant_m ? "; the sign of the latitude looks wrong, north for south" : "";
        return FormattableString.Invariant($"the weather file's station at {stationLatitude:0.##}, {stationLongitude:0.##} is {away_m / 1000:0} km from the place at {latitude:0.##}, {longitude:0.##}{meant}");
    }

    private static string? HighStation(WeatherAtPlace w)
    {
        if (w.IsShifted || w.Weather.Station.Elevation_m is not { } station_m || Math.Abs(w.Site.Elevation_m - station_m) <= FarUp_m)
            return null;
        string where = w.Site.Elevation_m > station_m ? "higher" : "lower";
        return FormattableString.Invariant($"the place at {w.Site.Elevation_m:0} m is {Math.Abs(w.Site.Elevation_m - station_m):0} m {where} than the weather file's station at {station_m:0} m");
    }

    /// <summary>Warns of each that is found.</summary>
    /// <param name="section"><c>[weather]</c>.</param>
    /// <param name="at">The weather and its place.</param>
    /// <param name="file">The file; null where there is none.</param>
    public static void Warn(SectionReader section, WeatherAtPlace at, string? file)
    {
        foreach (UnusualValue<WeatherAtPlace> unusual in All)
        {
            if (unusual.Find(at) is { } found)
                section.Reading.WarnUnusual(section.ValuePlace(WeatherKeys.File), file is null ? found : $"{file}: {found}", unusual.Usual);
        }
    }

    // Mean, mean swing from day to night [K, NaN where shorter than a day], and season from 0 in the depth of winter to 1.
    private sealed record Block(double Mean_C, double Swing_K, double Summer_frac, double Latitude_deg, double Elevation_m);

    private static bool IsFahrenheit(Block b)
    {
        double warmest_C = Math.Max(-15, 33 - (0.55 * b.Latitude_deg)), warm_C = warmest_C + (b.Summer_frac * (30 - warmest_C));
        return b.Mean_C > warm_C + 12 || (b.Mean_C > warm_C + 2 && b.Swing_K > 18);
    }

    private static bool IsCelsius(Block b)
    {
        double winter_C = 24 - (0.6 * b.Latitude_deg), summer_C = 33 - (0.28 * b.Latitude_deg);
        double normal_C = winter_C + (b.Summer_frac * (summer_C - winter_C)) - (0.004 * b.Elevation_m);
        double below_K = normal_C - b.Mean_C, other_K = Math.Abs((b.Mean_C * 1.8) + 32 - normal_C);
        return (below_K > 20 && other_K < Math.Max(6, below_K / 3)) || (below_K > 10 && other_K < below_K / 2 && b.Swing_K < 6);
    }

    private static string? InMostBlocks(WeatherAtPlace w, Func<Block, bool> isOdd, string unit, string other)
    {
        IReadOnlyList<WeatherRow> rows = w.Weather.Rows;
        double latitude_deg = w.Site.Latitude_deg ?? w.Weather.Station.Latitude_deg ?? Latitude_deg, elevation_m = w.Weather.Station.Elevation_m ?? w.Site.Elevation_m;
        int blocks = 0, odd = 0;
        double low_C = double.PositiveInfinity, high_C = double.NegativeInfinity;
        for (int i = 0; i < rows.Count;)
        {
            int first = i;
            double sum_C = 0, swings_K = 0, dayLow_C = double.PositiveInfinity, dayHigh_C = double.NegativeInfinity;
            int days = 0;
            DateTimeOffset day = rows[first].Time;
            for (; i < rows.Count && (rows[i].Time - rows[first].Time).TotalSeconds < Block_s; i++)
            {
                double air_C = rows[i].Air_K - ConversionFactors.ZeroCelsius_K;
                (sum_C, low_C, high_C) = (sum_C + air_C, Math.Min(low_C, air_C), Math.Max(high_C, air_C));
                if ((rows[i].Time - day).TotalDays >= 1)
                {
                    (swings_K, days, day) = (swings_K + dayHigh_C - dayLow_C, days + 1, rows[i].Time);
                    (dayLow_C, dayHigh_C) = (air_C, air_C);
                }

                (dayLow_C, dayHigh_C) = (Math.Min(dayLow_C, air_C), Math.Max(dayHigh_C, air_C));
            }

            double year = 2 * Math.PI * (rows[first].Time.DayOfYear - 20) / 365.25;
            double summer_frac = (1 - (Math.Cos(year) * (latitude_deg < 0 ? -1 : 1))) / 2;
            blocks++;
            if (isOdd(new Block(sum_C / (i - first), days == 0 ? double.NaN : swings_K / days, summer_frac, Math.Abs(latitude_deg), elevation_m)))
                odd++;
        }

        if (odd * 2 <= blocks)
            return null;
        double Shown(double celsius) => unit == "°F" ? (celsius * 1.8) + 32 : celsius;
        return FormattableString.Invariant($"air from {Shown(low_C):0.#} to {Shown(high_C):0.#} {unit} from {rows[0].Time:d MMM} to {rows[^1].Time:d MMM} at latitude {latitude_deg:0} looks like {other} under the heading {unit}");
    }
}
