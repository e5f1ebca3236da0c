using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;

namespace ColdSim.Files.Scenarios;

/// <summary>Reads a weather file once, however many options have the same weather; how it is read no option may change.</summary>
/// <param name="source">Opens the file.</param>
/// <param name="mostRows">The most rows of it that are kept; null for all.</param>
/// <param name="instead">Read in place of what the scenario names; null for that.</param>
internal sealed class WeatherOnce(IWeatherSource source, int? mostRows = null, WeatherInstead? instead = null)
{
    private readonly Dictionary<string, (WeatherResult? Weather, string Shown)> _read = [];

    /// <summary>The file in place of what the scenario names; null for that.</summary>
    public WeatherInstead? Instead => instead;

    /// <summary>The file's weather; null, and why, where it cannot be opened.</summary>
    public (WeatherResult? Weather, string Shown) Read(string file, WeatherRequest request)
    {
        if (!_read.TryGetValue(file, out (WeatherResult?, string) known))
            _read[file] = known = Open(file, request);
        return known;
    }

    private (WeatherResult?, string) Open(string file, WeatherRequest request)
    {
        if (!(instead?.Source ?? source).TryOpen(file, out Stream? stream, out string shown) || stream is null)
            return (null, shown);
        using (stream)
            return (WeatherFile.Read(stream, shown, request with { MostRows = mostRows }), shown);
    }
}
