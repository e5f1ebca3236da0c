namespace ColdSim.Files.Weather;

/// <summary>Reads our own layout from text; docs/weather-csv.md describes it.</summary>
public static class WeatherCsv
{
    /// <summary>Reads a weather file; never throws for its content.</summary>
    /// <param name="input">The text.</param>
    /// <param name="name">The file's name in messages.</param>
    /// <param name="offset">Offset from UTC of times that are written without one; null refuses such times.</param>
    public static WeatherResult Read(TextReader input, string name, TimeSpan? offset)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(name);
        return WeatherFile.ReadOwn(input, name, new WeatherRequest { Offset = offset });
    }
}
