namespace ColdSim.Files;

/// <summary>Writes a whole file or none: beside the target first, then renamed over it.</summary>
public static class AtomicFile
{
    /// <summary>Writes <paramref name="path"/>; an exception from <paramref name="write"/> leaves what was there before.</summary>
    /// <param name="path">The file; its folder must exist.</param>
    /// <param name="write">Writes the content.</param>
    public static void Write(string path, Action<Stream> write)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(write);
        string target = Path.GetFullPath(path);
        string draft = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}.part");
        try
        {
            using (FileStream stream = new(draft, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }
            File.Move(draft, target, overwrite: true);
        }
        catch
        {
            File.Delete(draft);
            throw;
        }
    }
}
