namespace ColdSim.Files.Scenarios;

/// <summary>Weather files on disk, relative names starting at one folder: the scenario's own.</summary>
/// <param name="folder">The folder; empty for the current one.</param>
/// <param name="open">Opens a file; null takes the disk's.</param>
internal sealed class FolderWeatherSource(string folder, Func<string, Stream>? open = null) : IWeatherSource
{
    /// <inheritdoc/>
    public bool TryOpen(string file, out Stream? stream, out string shown)
    {
        ArgumentNullException.ThrowIfNull(file);
        stream = null;
        try
        {
            shown = Path.Combine(folder, file);
            stream = open is null ? new FileStream(shown, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan) : open(shown);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            shown = FileProblem.WhyUnreadable(e);
            return false;
        }
    }
}
