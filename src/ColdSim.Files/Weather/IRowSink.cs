using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>What is known about a weather file before its first row.</summary>
/// <param name="Format">The layout.</param>
/// <param name="Clock">How the times were interpreted, in a few words.</param>
/// <param name="Station">The place of the weather.</param>
public sealed record WeatherSource(WeatherFormat Format, string Clock, WeatherStation Station);

/// <summary>Receives the rows of a weather file one by one, so that they need not all be in memory.</summary>
/// <remarks>Where the file has problems, the rows before them may already have been received; they are not to be used.</remarks>
public interface IRowSink
{
    /// <summary>Called once, before the first row.</summary>
    void Begin(WeatherSource source);

    /// <summary>Drops the rows received so far: they lie before a gap that is before the days wanted. Begins again.</summary>
    void Restart() => throw new NotSupportedException("rows that were received cannot be dropped");

    /// <summary>Receives the next row, in order of time.</summary>
    void Take(in WeatherRow row);
}

/// <summary>Receives a row from the previous stage of reading; by reference, because a row is large and a file has millions of them.</summary>
internal delegate void RowHandler(in WeatherRow row);
