using ColdSim.Files;

namespace ColdSim.App.Commands;

/// <summary>The files of the disk.</summary>
internal sealed class DiskFiles : IFiles
{
    public bool Exists(string path) => File.Exists(path);

    public bool FolderExists(string path) => Directory.Exists(path);

    public IEnumerable<string> In(string folder) => Directory.EnumerateFiles(folder);

    public Stream Open(string path) => new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan);

    public void Write(string path, Action<Stream> write) => AtomicFile.Write(path, write);
}
