using ColdSim.Files.Disk;
using ColdSim.Files.Logs;

namespace ColdSim.App.Commands;

/// <summary>The files of the disk.</summary>
/// <param name="calls">How they are written; null for the disk itself.</param>
internal class DiskFiles(DiskCalls? calls = null) : IFiles
{
    private readonly DiskCalls _calls = calls ?? DiskCalls.Real;

    public FilesRead Reads { get; } = new();

    public virtual bool Exists(string path) => File.Exists(path);

    public bool FolderExists(string path) => Directory.Exists(path);

    public IEnumerable<string> In(string folder) => Directory.EnumerateFiles(folder);

    public virtual Stream Open(string path)
    {
        Reads.Add(path);
        return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan);
    }

    public void Write(OutputFile file, Action<Stream> write)
    {
        file.Check(Reads);
        AtomicFile.Write(file.Path, write, _calls);
    }

    public void MakeFolder(string path) => UserFolder.Make(path);

    public void Append(string log, IReadOnlyList<LogEntry> entries) => LogFile.Append(log, entries, Reads, _calls);
}
