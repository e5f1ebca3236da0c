using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>What is known of a weather file before its first row.</summary>
/// <param name="Format">The layout.</param>
/// <param name="Clock">How the times were understood, in a few words.</param>
/// <param name="Station">Where it is the weather of.</param>
public sealed record WeatherSource(WeatherFormat Format, string Clock, WeatherStation Station);

/// <summary>Takes the rows of a weather file one by one, so that nobody has to hold them all.</summary>
/// <remarks>Where the file has problems, rows before them may have been taken all the same; they are then good for nothing.</remarks>
public interface IRowSink
{
    /// <summary>Told once, before the first row.</summary>
    void Begin(WeatherSource source);

    /// <summary>Takes the next row, in order of time.</summary>
    void Take(in WeatherRow row);
}
