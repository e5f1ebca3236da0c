namespace ColdSim.Files.Disk;

/// <summary>A path without links: each folder on the way, and the file itself, is the one that its link leads to.</summary>
internal static class CanonicalPath
{
    // As many as the systems follow themselves.
    private const int MostLinks = 40;

    /// <summary>The canonical path; what does not exist is kept as it is written.</summary>
    public static string Of(string path)
    {
        string full = Path.GetFullPath(path);
        for (int links = 0; links < MostLinks; links++)
        {
            if (WithoutFirstLink(full) is not { } next)
                return full;
            full = next;
        }

        return full;
    }

    /// <summary>The same text for all names of a file: its canonical path, in one letter case where the system mostly makes no difference between them.</summary>
    public static string KeyOf(string path) => OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() ? Of(path).ToUpperInvariant() : Of(path);

    /// <summary>The file that a write to this name changes: where it is a link, what that leads to, there or not.</summary>
    /// <exception cref="IOException">The links lead round in a circle.</exception>
    public static string BehindLink(string path)
    {
        string full = Path.GetFullPath(path);
        for (int links = 0; ; links++)
        {
            if (new FileInfo(full).LinkTarget is not { } target)
                return full;
            if (links == MostLinks)
                throw FileFaultException.NotWritten(path, "its links lead round in a circle");
            full = Path.GetFullPath(target, Path.GetDirectoryName(full)!);
        }
    }

    private static string? WithoutFirstLink(string full)
    {
        string root = Path.GetPathRoot(full) ?? "", at = root;
        string[] parts = full[root.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i < parts.Length; i++)
        {
            string folder = at;
            at = Path.Combine(at, parts[i]);
            if (new FileInfo(at).LinkTarget is { } target)
                return Path.GetFullPath(Path.Combine([target, .. parts[(i + 1)..]]), folder);
        }

        return null;
    }
}
