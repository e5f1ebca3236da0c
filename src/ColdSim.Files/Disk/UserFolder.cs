namespace ColdSim.Files.Disk;

/// <summary>The folders in which a person's programs keep their settings and what can be fetched again, and the folders below them.</summary>
internal static class UserFolder
{
    /// <summary>The folder: <c>XDG_CONFIG_HOME</c> or <c>~/.config</c>, <c>%APPDATA%</c>, <c>~/Library/Application Support</c>; null where the person has none.</summary>
    public static string? Settings()
        => Folder(Environment.SpecialFolder.ApplicationData);

    /// <summary>
    /// The folder of what can be fetched again: <c>XDG_CACHE_HOME</c> or <c>~/.cache</c>, <c>%LOCALAPPDATA%</c>, <c>~/Library/Caches</c>; null where the
    /// person has none.
    /// </summary>
    public static string? Cache()
    {
        if (OperatingSystem.IsWindows())
            return Folder(Environment.SpecialFolder.LocalApplicationData);
        string? home = Folder(Environment.SpecialFolder.UserProfile);
        if (OperatingSystem.IsMacOS())
            return home is null ? null : Path.Combine(home, "Library", "Caches");

        // A relative path is to be ignored, as the standard for these folders says.
        if (Environment.GetEnvironmentVariable("XDG_CACHE_HOME") is { Length: > 0 } set && Path.IsPathRooted(set))
            return set;
        return home is null ? null : Path.Combine(home, ".cache");
    }

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

    private static string? Folder(Environment.SpecialFolder which)
        => Environment.GetFolderPath(which, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } folder ? folder : null;
}
