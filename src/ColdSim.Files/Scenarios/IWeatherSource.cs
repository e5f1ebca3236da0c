namespace ColdSim.Files.Scenarios;

/// <summary>Where a scenario's weather file comes from.</summary>
public interface IWeatherSource
{
    /// <summary>Opens a weather file.</summary>
    /// <param name="file">As the scenario names it.</param>
    /// <param name="stream">Its bytes, to be disposed of by the caller; null where it cannot be opened.</param>
    /// <param name="shown">How messages name it; where it cannot be opened, why.</param>
    bool TryOpen(string file, out Stream? stream, out string shown);
}
