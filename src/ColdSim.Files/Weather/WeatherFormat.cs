namespace ColdSim.Files.Weather;

/// <summary>The layouts of weather files that can be read; docs/weather-formats.md describes them.</summary>
public enum WeatherFormat
{
    /// <summary>Our own.</summary>
    Csv,

    /// <summary>EnergyPlus weather.</summary>
    Epw,

    /// <summary>Typical meteorological year, third edition.</summary>
    Tmy3,

    /// <summary>Local Climatological Data, version 1 or 2.</summary>
    Lcd,

    /// <summary>Global Historical Climatology Network, hourly.</summary>
    Ghcnh,

    /// <summary>Open-Meteo's hourly export.</summary>
    OpenMeteo,

    /// <summary>Meteostat's hourly data.</summary>
    Meteostat,

    /// <summary>The US weather service's hourly forecast.</summary>
    NwsForecast,

    /// <summary>Open-Meteo's hourly answer in JSON.</summary>
    OpenMeteoJson,

    /// <summary>MET Norway's locationforecast.</summary>
    MetNorway,

    /// <summary>Environment Canada's hourly CSV.</summary>
    EnvironmentCanada,

    /// <summary>NSRDB's CSV, which the SAM program reads and writes too.</summary>
    Nsrdb,

    /// <summary>PVGIS, an hourly series or a typical year.</summary>
    Pvgis,

    /// <summary>Global-hourly (Integrated Surface Database) CSV.</summary>
    GlobalHourly,

    /// <summary>Any other table, by a column map.</summary>
    Mapped,
}

/// <summary>The names of the formats.</summary>
internal static class WeatherFormatNames
{
    private static readonly (WeatherFormat Format, string Name, string Title)[] All =
    [
        (WeatherFormat.Csv, "csv", "our own CSV"),
        (WeatherFormat.Epw, "epw", "EPW (EnergyPlus weather)"),
        (WeatherFormat.Tmy3, "tmy3", "TMY3 CSV (typical meteorological year)"),
        (WeatherFormat.Lcd, "lcd", "NOAA Local Climatological Data CSV"),
        (WeatherFormat.Ghcnh, "ghcnh", "NOAA GHCN-hourly, pipe-separated"),
        (WeatherFormat.OpenMeteo, "open-meteo", "Open-Meteo hourly CSV"),
        (WeatherFormat.Meteostat, "meteostat", "Meteostat hourly CSV"),
        (WeatherFormat.NwsForecast, "nws", "US weather service hourly forecast, JSON"),
        (WeatherFormat.OpenMeteoJson, "open-meteo-json", "Open-Meteo hourly JSON"),
        (WeatherFormat.MetNorway, "met-norway", "MET Norway locationforecast, JSON"),
        (WeatherFormat.EnvironmentCanada, "environment-canada", "Environment Canada hourly CSV"),
        (WeatherFormat.Nsrdb, "nsrdb", "NSRDB (SAM) CSV"),
        (WeatherFormat.Pvgis, "pvgis", "PVGIS CSV"),
        (WeatherFormat.GlobalHourly, "global-hourly", "NOAA global-hourly CSV"),
        (WeatherFormat.Mapped, "map", "a table by its column map"),
    ];

    /// <summary>The formats that can be chosen by name; a column map is chosen by giving one.</summary>
    public static IReadOnlyList<(string Name, WeatherFormat Format)> Choices => Chosen;

    /// <summary>The same as an array, which is read without code that is compiled at start.</summary>
    internal static (string Name, WeatherFormat Format)[] Chosen { get; } = ByName();

    /// <summary>The full names.</summary>
    internal static IEnumerable<string> Titles => All.Select(f => f.Title);

    /// <summary>The name on the command line, in scenarios and in JSON.</summary>
    public static string Name(this WeatherFormat format) => Of(format).Name;

    /// <summary>The full name, for people.</summary>
    public static string Title(this WeatherFormat format) => Of(format).Title;

    /// <summary>Whether its times are in UTC, so that noon at the place is not at 12:00.</summary>
    public static bool IsInUtc(this WeatherFormat format) => format is WeatherFormat.Ghcnh or WeatherFormat.Meteostat or WeatherFormat.MetNorway or WeatherFormat.Pvgis or WeatherFormat.GlobalHourly;

    private static (WeatherFormat Format, string Name, string Title) Of(WeatherFormat format)
    {
        foreach ((WeatherFormat Format, string Name, string Title) one in All)
        {
            if (one.Format == format)
                return one;
        }

        throw new ArgumentOutOfRangeException(nameof(format), format, "A layout without a name.");
    }

    private static (string Name, WeatherFormat Format)[] ByName()
    {
        (string, WeatherFormat)[] choices = new (string, WeatherFormat)[All.Length - 1];
        int count = 0;
        foreach ((WeatherFormat format, string name, _) in All)
        {
            if (format != WeatherFormat.Mapped)
                choices[count++] = (name, format);
        }

        return choices;
    }
}
