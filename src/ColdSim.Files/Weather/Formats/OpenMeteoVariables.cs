using ColdSim.Files.Quantities;

namespace ColdSim.Files.Weather.Formats;

/// <summary>What Open-Meteo calls the columns, in its CSV and its JSON.</summary>
internal static class OpenMeteoVariables
{
    private static readonly (WeatherColumn Column, string[] Names)[] All =
    [
        (WeatherColumn.Air, ["temperature_2m"]),
        (WeatherColumn.DewPoint, ["dew_point_2m", "dewpoint_2m"]),
        (WeatherColumn.Humidity, ["relative_humidity_2m", "relativehumidity_2m"]),
        (WeatherColumn.Wind, ["wind_speed_10m", "windspeed_10m"]),
        (WeatherColumn.Pressure, ["surface_pressure"]),
        (WeatherColumn.Cloud, ["cloud_cover", "cloudcover"]),
        (WeatherColumn.Sun, ["shortwave_radiation", "shortwave_radiation_instant"]),
    ];

    /// <summary>The column of a variable; null where we do not use it.</summary>
    public static WeatherColumn? Column(string name)
    {
        foreach ((WeatherColumn column, string[] names) in All)
        {
            if (Array.IndexOf(names, name) >= 0)
                return column;
        }

        return null;
    }

    /// <summary>The unit of a column, by its spelling or, where there is none, the service's default; null where it is unknown.</summary>
    public static UnitSpelling? Unit(WeatherColumn column, string? spelling) => column.FindUnit(spelling ?? Default(column));

    /// <summary>What a radiation by this name is the mean of.</summary>
    public static IrradianceAveraging Averaging(string name)
        => name.EndsWith("_instant", StringComparison.Ordinal) ? IrradianceAveraging.Instantaneous : IrradianceAveraging.HourEnding;

    private static string Default(WeatherColumn column)
        => column == WeatherColumn.Wind ? "km/h" : column == WeatherColumn.Sun ? "W/m²" : column == WeatherColumn.Pressure ? "hPa"
            : column == WeatherColumn.Cloud || column == WeatherColumn.Humidity ? "%" : "°C";
}
