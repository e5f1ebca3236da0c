namespace ColdSim.App.Commands;

/// <summary>The file of a person's settings, beside the rig that the person keeps.</summary>
internal static class UserSettings
{
    private const string Folder = "coldsim";
    private const string Name = "settings.toml";

    /// <summary>Where it is; null where the person has no folder of settings.</summary>
    public static string? PathIn(Host host) => host.Settings() is { } settings ? Path.Combine(settings, Folder, Name) : null;

    /// <summary>The file; null where there is none.</summary>
    public static string? Find(Host host) => PathIn(host) is { } path && host.Files.Exists(path) ? path : null;
}
