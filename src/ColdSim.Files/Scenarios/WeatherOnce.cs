using ColdSim.Files.Weather;

namespace ColdSim.Files.Scenarios;

/// <summary>Reads a weather file once, however many options stand under the same weather.</summary>
internal sealed class WeatherOnce(IWeatherSource source)
{
    private readonly Dictionary<(string File, TimeSpan? Offset), (WeatherResult? Weather, string Shown)> _read = [];

    /// <summary>The file's weather; null, and why, where it cannot be opened.</summary>
    public (WeatherResult? Weather, string Shown) Read(string file, TimeSpan? offset)
    {
        if (!_read.TryGetValue((file, offset), out (WeatherResult?, string) known))
            _read[(file, offset)] = known = Open(file, offset);
        return known;
    }

    private (WeatherResult?, string) Open(string file, TimeSpan? offset)
    {
        if (!source.TryOpen(file, out TextReader? text, out string shown) || text is null)
            return (null, shown);
        using (text)
            return (WeatherCsv.Read(text, shown, offset), shown);
    }
}
