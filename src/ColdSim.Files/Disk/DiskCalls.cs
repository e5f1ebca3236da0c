namespace ColdSim.Files.Disk;

/// <summary>The steps of a write that the disk may refuse; a test refuses them in its place.</summary>
internal class DiskCalls
{
    /// <summary>The disk itself.</summary>
    public static readonly DiskCalls Real = new();

    /// <summary>What the content is written through.</summary>
    public virtual Stream Through(FileStream file) => file;

    /// <summary>Waits until all that was written is on the disk.</summary>
    public virtual void FlushToDisk(FileStream file) => file.Flush(flushToDisk: true);

    /// <summary>Puts a finished draft in the place of the file.</summary>
    public virtual void Rename(string draft, string target) => File.Move(draft, target, overwrite: true);
}
