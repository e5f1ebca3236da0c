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
