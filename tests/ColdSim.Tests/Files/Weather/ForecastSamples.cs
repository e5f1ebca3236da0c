namespace ColdSim.Tests.Files.Weather;

/// <summary>Forecasts in JSON: invented data, built by hand in the publishers' documented layouts.</summary>
internal static class ForecastSamples
{
    /// <summary>Invented data in the publisher's documented layout, with a block of the moment and one of quarters before the hours.</summary>
    public const string OpenMeteo = """
        {
          "latitude": 46.25, "longitude": -94.125, "generationtime_ms": 0.1, "utc_offset_seconds": -21600, "timezone": "America/Chicago", "timezone_abbreviation": "CST", "elevation": 372.0,
          "current_units": { "time": "iso8601", "temperature_2m": "°C" },
          "current": { "time": "2031-01-10T05:15", "interval": 900, "temperature_2m": 99 },
          "minutely_15_units": { "time": "iso8601", "temperature_2m": "°C" },
          "minutely_15": { "time": ["2031-01-10T05:00", "2031-01-10T05:15"], "temperature_2m": [-1, -2] },
          "hourly_units": { "time": "iso8601", "temperature_2m": "°F", "dew_point_2m": "°F", "relative_humidity_2m": "%", "wind_speed_10m": "mp/h", "cloud_cover": "%", "surface_pressure": "hPa", "shortwave_radiation": "W/m²" },
          "hourly": {
            "time": ["2031-01-10T06:00", "2031-01-10T07:00", "2031-01-10T08:00", "2031-01-10T09:00"],
            "temperature_2m": [-4.0, -13.0, 5.0, 14.0],
            "dew_point_2m": [-13.0, null, -4.0, 5.0],
            "wind_speed_10m": [10, 5, 0, 20],
            "cloud_cover": [101, 50, 0, 25],
            "surface_pressure": [970.0, 970.5, 971.0, 971.5],
            "shortwave_radiation": [0.0, 0.0, 0.0, 120.0]
          }
        }
        """;

    /// <summary>Invented data in the publisher's documented layout of a <c>complete</c> answer: hourly, then a block of six hours with its lowest and highest.</summary>
    public const string MetNorway = """
        {
          "type": "Feature",
          "geometry": { "type": "Point", "coordinates": [10.75, 60.25, 510] },
          "properties": {
            "meta": {
              "updated_at": "2031-01-10T04:30:00Z",
              "units": { "air_pressure_at_sea_level": "hPa", "air_temperature": "celsius", "air_temperature_max": "celsius", "air_temperature_min": "celsius",
                "cloud_area_fraction": "%", "dew_point_temperature": "celsius", "relative_humidity": "%", "wind_speed": "m/s" }
            },
            "timeseries": [
              { "time": "2031-01-10T05:00:00Z", "data": {
                "instant": { "details": { "air_pressure_at_sea_level": 1020.1, "air_temperature": -8.0, "cloud_area_fraction": 12.5, "dew_point_temperature": -10.0, "relative_humidity": 85.0, "wind_speed": 1.5 } },
                "next_1_hours": { "summary": { "symbol_code": "fair_day" }, "details": { "precipitation_amount": 0.0 } },
                "next_6_hours": { "details": { "air_temperature_max": 30.0, "air_temperature_min": -50.0 } } } },
              { "time": "2031-01-10T06:00:00Z", "data": {
                "instant": { "details": { "air_temperature": -9.0, "cloud_area_fraction": 25.0, "relative_humidity": 90.0, "wind_speed": 2.0 } },
                "next_6_hours": { "details": { "air_temperature_max": -5.0, "air_temperature_min": -14.0 } } } },
              { "time": "2031-01-10T12:00:00Z", "data": {
                "instant": { "details": { "air_temperature": -6.0, "cloud_area_fraction": 100.0, "dew_point_temperature": -9.0, "wind_speed": 5.0 } },
                "next_6_hours": { "details": { "air_temperature_max": -6.0, "air_temperature_min": -8.0 } } } },
              { "time": "2031-01-10T18:00:00Z", "data": { "instant": { "details": { "air_temperature": -8.0, "wind_speed": 4.0 } } } }
            ]
          }
        }
        """;

    /// <summary>Invented data in the publisher's documented layout of the forecast of days and nights.</summary>
    public const string NwsHalfDays = """
        {
          "type": "Feature",
          "properties": {
            "units": "us",
            "periods": [
              { "number": 1, "name": "Tonight", "startTime": "2031-01-10T18:00:00-06:00", "endTime": "2031-01-11T06:00:00-06:00", "isDaytime": false, "temperature": -4, "temperatureUnit": "F", "windSpeed": "5 mph" },
              { "number": 2, "name": "Saturday", "startTime": "2031-01-11T06:00:00-06:00", "endTime": "2031-01-11T18:00:00-06:00", "isDaytime": true, "temperature": 14, "temperatureUnit": "F", "windSpeed": "5 to 10 mph" }
            ]
          }
        }
        """;
}
