namespace ColdSim.Files.Disk;

/// <summary>The files that a run reads, none of which it overwrites. May be used from several threads.</summary>
public sealed class FilesRead
{
    private readonly List<string> _paths = [];

    /// <summary>Enters a file that is read, or will be.</summary>
    /// <param name="path">As it was named.</param>
    public void Add(string path)
    {
        lock (_paths)
        {
            if (!_paths.Contains(path))
                _paths.Add(path);
        }
    }

    /// <summary>The file that is read under this or another name, as it was named; null where none is.</summary>
    /// <param name="path">What is about to be written.</param>
    /// <param name="ownName">Whether it may be read under this very name, as a log is that is appended to.</param>
    public string? SameAs(string path, bool ownName = false)
    {
        if (FileStatus.Of(path) is not { } status)
            return null;
        string[] paths;
        lock (_paths)
            paths = [.. _paths];
        foreach (string read in paths)
        {
            if (!(ownName && read == path) && FileStatus.Of(read) is { } other && other.Identity == status.Identity)
                return read;
        }

        return null;
    }
}
