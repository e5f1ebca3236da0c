using ColdSim.Files.Disk;
using ColdSim.Files.Logs;

namespace ColdSim.App.Commands;

/// <summary>The files that commands read and write: the one door, which knows what was read and writes over none of it.</summary>
internal interface IFiles
{
    /// <summary>The files that this run reads.</summary>
    FilesRead Reads { get; }

    /// <summary>Whether there is a file of that name.</summary>
    bool Exists(string path);

    /// <summary>Whether there is a folder of that name.</summary>
    bool FolderExists(string path);

    /// <summary>Paths of the files in a folder.</summary>
    IEnumerable<string> In(string folder);

    /// <summary>Opens a file to be read once from its beginning, and keeps in mind that it is read.</summary>
    Stream Open(string path);

    /// <summary>Writes a whole file or none: where writing fails, what was there stays.</summary>
    /// <exception cref="FileFaultException">It is read, it is not ours to replace, or it cannot be written.</exception>
    void Write(OutputFile file, Action<Stream> write);

    /// <summary>Makes a folder and those above it; one that is there already is left alone.</summary>
    /// <exception cref="FileFaultException">It cannot be made.</exception>
    void MakeFolder(string path);

    /// <summary>Appends readings to a log; where that fails, the log is as it was.</summary>
    /// <exception cref="FileFaultException">It is read as something else, or it cannot be written.</exception>
    void Append(string log, IReadOnlyList<LogEntry> entries);
}
