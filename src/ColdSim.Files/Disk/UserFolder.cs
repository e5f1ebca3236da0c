namespace ColdSim.Files.Disk;

/// <summary>The folder in which a person's programs keep their settings, and the folders below it.</summary>
public static class UserFolder
{
    /// <summary>The folder: <c>XDG_CONFIG_HOME</c> or <c>~/.config</c>, <c>%APPDATA%</c>, <c>~/Library/Application Support</c>; null where the person has none.</summary>
    public static string? Settings()
        => Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } folder ? folder : null;

    /// <summary>Makes a folder and those above it; one that is there already is left alone.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="FileFaultException">It cannot be made.</exception>
    public static void Make(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw FileFaultException.NotWritten(folder, e);
        }
    }
}
