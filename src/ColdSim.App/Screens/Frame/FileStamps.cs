namespace ColdSim.App.Screens.Frame;

/// <summary>Files as they were when they were read, so that a later change is noticed.</summary>
internal sealed record FileStamps
{
    private readonly (string Path, DateTime Written, long Length)[] _files;

    private FileStamps((string, DateTime, long)[] files) => _files = files;

    /// <summary>No files.</summary>
    public static FileStamps None { get; } = new([]);

    /// <summary>The files as they are now; one that is not there counts as empty.</summary>
    public static FileStamps Of(IEnumerable<string> paths) => new([.. paths.Distinct().Select(Stamp)]);

    /// <summary>These and more.</summary>
    public FileStamps With(FileStamps others) => new([.. _files, .. others._files.Where(o => !Array.Exists(_files, f => f.Path == o.Path))]);

    /// <summary>The first file that is no longer as it was; null where all are.</summary>
    public string? Changed()
    {
        foreach ((string Path, DateTime Written, long Length) file in _files)
        {
            if (Stamp(file.Path) != file)
                return file.Path;
        }

        return null;
    }

    private static (string Path, DateTime Written, long Length) Stamp(string path)
    {
        FileInfo file = new(path);
        return file.Exists ? (path, file.LastWriteTimeUtc, file.Length) : (path, default, 0);
    }
}
