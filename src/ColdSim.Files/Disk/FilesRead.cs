namespace ColdSim.Files.Disk;

/// <summary>The files that a run reads, or that belong to what it reads; it overwrites none of them. May be used from several threads.</summary>
internal sealed class FilesRead
{
    private readonly List<string> _paths = [];

    /// <summary>The files entered so far, as they were named.</summary>
    public IReadOnlyList<string> Paths
    {
        get
        {
            lock (_paths)
                return [.. _paths];
        }
    }

    /// <summary>Enters a file that is read, or will be, or would be but for an option; it need not exist.</summary>
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
        FileStatus? status = FileStatus.Of(path);
        string[] paths;
        lock (_paths)
            paths = [.. _paths];
        foreach (string read in paths)
        {
            if (!(ownName && read == path) && (status is null ? CanonicalPath.KeyOf(read) == CanonicalPath.KeyOf(path) : FileStatus.Of(read)?.Identity == status.Identity))
                return read;
        }

        return null;
    }
}
