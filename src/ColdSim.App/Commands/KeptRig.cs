namespace ColdSim.App.Commands;

/// <summary>The rig that a person keeps, so that no command needs to be told of it: a scenario in the folder of the person's settings.</summary>
internal static class KeptRig
{
    private const string Folder = "coldsim";
    private const string Name = "rig.toml";

    /// <summary>Where it is kept; null where the person has no folder of settings.</summary>
    public static string? PathIn(Host host) => host.Settings() is { } settings ? Path.Combine(settings, Folder, Name) : null;

    /// <summary>Its file; null where none is kept.</summary>
    public static string? Find(Host host) => PathIn(host) is { } path && host.Files.Exists(path) ? path : null;
}
