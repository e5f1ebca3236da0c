using ColdSim.Files;

namespace ColdSim.App.Commands;

/// <summary>The files that commands read and write.</summary>
internal interface IFiles
{
    /// <summary>Whether there is a file of that name.</summary>
    bool Exists(string path);

    /// <summary>Whether there is a folder of that name.</summary>
    bool FolderExists(string path);

    /// <summary>Paths of the files in a folder.</summary>
    IEnumerable<string> In(string folder);

    /// <summary>Opens a file to be read once from its beginning.</summary>
    Stream Open(string path);

    /// <summary>Writes a whole file or none: where writing fails, what was there stays.</summary>
    void Write(string path, Action<Stream> write);
}

/// <summary>The files of the disk.</summary>
internal sealed class DiskFiles : IFiles
{
    public bool Exists(string path) => File.Exists(path);

    public bool FolderExists(string path) => Directory.Exists(path);

    public IEnumerable<string> In(string folder) => Directory.EnumerateFiles(folder);

    public Stream Open(string path) => new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan);

    public void Write(string path, Action<Stream> write) => AtomicFile.Write(path, write);
}
