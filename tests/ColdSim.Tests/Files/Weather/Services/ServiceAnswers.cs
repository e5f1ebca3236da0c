using System.Globalization;

namespace ColdSim.Tests.Files.Weather.Services;

/// <summary>
/// Answers of the services, built by hand in their layouts with invented values. The layout of the US service's hours and of MET Norway's compact document
/// was seen in real files; all else is from memory.
/// </summary>
internal static class ServiceAnswers
{
    /// <summary>The hour at which every forecast here begins.</summary>
    public static readonly DateTimeOffset Start = new(2031, 1, 14, 16, 0, 0, TimeSpan.FromHours(-6));

    /// <summary>Air by the hour: 10 °F at 16:00, down by 2 °F an hour to -20 °F at 07:00, and up again.</summary>
    public static int Fahrenheit(int hour) => (hour % 24) is var h && h <= 15 ? 10 - (2 * h) : -20 + ((h - 15) * 10 / 3);

    /// <summary>The answer for a position: which cell it is in, and where that cell's hours are. From memory.</summary>
    /// <param name="address">The address of the server that is named in it.</param>
    public static string NwsPoint(Uri address) => $$"""
        {
          "@context": [], "id": "{{address}}points/46.2,-94.1", "type": "Feature",
          "geometry": { "type": "Point", "coordinates": [-94.1, 46.2] },
          "properties": {
            "gridId": "XYZ", "gridX": 57, "gridY": 101,
            "forecast": "{{address}}gridpoints/XYZ/57,101/forecast",
            "forecastHourly": "{{address}}gridpoints/XYZ/57,101/forecast/hourly",
            "timeZone": "America/Chicago"
          }
        }
        """;

    /// <summary>The hours of a cell.</summary>
    /// <param name="hours">How many.</param>
    /// <param name="first">After how many hours the first is.</param>
    public static string NwsHourly(int hours = 156, int first = 0) => $$"""
        {
          "type": "Feature",
          "geometry": { "type": "Polygon", "coordinates": [[[-94.11, 46.19], [-94.11, 46.21], [-94.09, 46.21], [-94.09, 46.19], [-94.11, 46.19]]] },
          "properties": {
            "units": "us", "forecastGenerator": "HourlyForecastGenerator", "generatedAt": "2031-01-14T21:50:00+00:00", "updateTime": "2031-01-14T21:10:00+00:00",
            "validTimes": "2031-01-14T15:00:00+00:00/P7DT10H", "elevation": { "unitCode": "wmoUnit:m", "value": 372 },
            "periods": [
        {{string.Join(",\n", Enumerable.Range(first, hours).Select(NwsPeriod))}}
            ]
          }
        }
        """;

    /// <summary>What the US service says of a position outside the United States. From memory.</summary>
    public const string NwsOutside = """
        { "title": "Data Unavailable For Requested Point", "type": "https://api.weather.gov/problems/InvalidPoint", "status": 404, "detail": "Unable to provide data for requested point 61.2,10.5" }
        """;

    /// <summary>What Open-Meteo says of a question that it refuses. From memory.</summary>
    public const string OpenMeteoRefusal = """{"error":true,"reason":"Latitude must be in range of -90 to 90°. Given: 100.0."}""";

    /// <summary>What a network says that asks for a log-in. From memory.</summary>
    public const string Portal = "<!DOCTYPE html>\n<html><head><title>Camp Wi-Fi</title></head><body>Log in</body></html>\n";

    /// <summary>Open-Meteo's hours from midnight of the day. From memory.</summary>
    public static string OpenMeteo(int days = 8)
    {
        DateTimeOffset midnight = Start.AddHours(-16);
        int[] hours = [.. Enumerable.Range(0, 24 * days)];
        string List(Func<int, string> value) => string.Join(',', hours.Select(value));
        return $$"""
            {"latitude":46.25,"longitude":-94.125,"generationtime_ms":0.2,"utc_offset_seconds":-21600,"timezone":"America/Chicago","timezone_abbreviation":"GMT-6","elevation":372.0,
            "hourly_units":{"time":"iso8601","temperature_2m":"°C","dew_point_2m":"°C","wind_speed_10m":"km/h","shortwave_radiation":"W/m²","cloud_cover":"%","surface_pressure":"hPa"},
            "hourly":{"time":[{{List(h => $"\"{Text(midnight.AddHours(h), "yyyy-MM-dd'T'HH:mm")}\"")}}],
            "temperature_2m":[{{List(h => Number(Celsius(h + 8)))}}],
            "dew_point_2m":[{{List(h => Number(Celsius(h + 8) - 3))}}],
            "wind_speed_10m":[{{List(h => "7.2")}}],
            "shortwave_radiation":[{{List(h => h % 24 is > 8 and < 17 ? "150.0" : "0.0")}}],
            "cloud_cover":[{{List(h => "25")}}],
            "surface_pressure":[{{List(h => "970.0")}}]
            } }
            """;
    }

    /// <summary>MET Norway's complete document: 48 hours, then blocks of six hours with a lowest and a highest each. The details of the blocks are from memory.</summary>
    public static string MetNorway() => $$"""
        {"type":"Feature","geometry":{"type":"Point","coordinates":[-94.1,46.2,372]},
        "properties":{"meta":{"updated_at":"2031-01-14T20:37:12Z",
        "units":{"air_temperature":"celsius","air_temperature_max":"celsius","air_temperature_min":"celsius","cloud_area_fraction":"%","dew_point_temperature":"celsius","relative_humidity":"%","wind_speed":"m/s"} },
        "timeseries":[
        {{string.Join(",\n", Enumerable.Range(0, 48).Select(h => MetInstant(h, "")))}},
        {{string.Join(",\n", Enumerable.Range(0, 28).Select(MetBlock))}}
        ] } }
        """;

    // The lowest and highest of the six hours; the fourth block has the lowest of all.
    private static string MetBlock(int block) => MetInstant(
        48 + (6 * block),
        block == 27 ? "" : $",\"next_6_hours\":{{\"details\":{{\"air_temperature_max\":-5.0,\"air_temperature_min\":{(block == 3 ? "-41.5" : "-33.0")}}}}}",
        -20);

    private static string NwsPeriod(int hour) => $$"""
              { "number": {{hour + 1}}, "name": "", "startTime": "{{Text(Start.AddHours(hour), "yyyy-MM-dd'T'HH:mm:sszzz")}}", "endTime": "{{Text(Start.AddHours(hour + 1), "yyyy-MM-dd'T'HH:mm:sszzz")}}",
                "isDaytime": false, "temperature": {{Fahrenheit(hour)}}, "temperatureUnit": "F", "temperatureTrend": null,
                "dewpoint": { "unitCode": "wmoUnit:degC", "value": -30 }, "windSpeed": "5 mph", "windDirection": "NW", "shortForecast": "Clear", "detailedForecast": "" }
        """;

    private static string MetInstant(int hour, string block, double? air_C = null)
        => $"{{\"time\":\"{Text(Start.AddHours(hour).ToUniversalTime(), "yyyy-MM-dd'T'HH:mm:ss'Z'")}\",\"data\":{{\"instant\":{{\"details\":{{"
            + $"\"air_temperature\":{Number(air_C ?? Celsius(hour))},\"cloud_area_fraction\":12.5,\"dew_point_temperature\":-30.0,\"relative_humidity\":70.0,\"wind_speed\":2.0}}}}"
            + $"{block}}}}}";

    private static double Celsius(int hour) => Math.Round((Fahrenheit(hour) - 32) / 1.8, 1);

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Text(DateTimeOffset time, string format) => time.ToString(format, CultureInfo.InvariantCulture);
}
