using System.Text;

namespace ColdSim.Files.Scenarios;

/// <summary>Weather files on disk, relative names taken from one folder: the scenario's own.</summary>
/// <param name="folder">The folder; empty for the current one.</param>
public sealed class FolderWeatherSource(string folder) : IWeatherSource
{
    /// <inheritdoc/>
    public bool TryOpen(string file, out TextReader? text, out string shown)
    {
        ArgumentNullException.ThrowIfNull(file);
        text = null;
        try
        {
            shown = Path.Combine(folder, file);
            text = new StreamReader(shown, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true));
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            shown = FileTrouble.Words(e);
            return false;
        }
    }
}
