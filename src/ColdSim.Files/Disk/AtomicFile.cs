using System.Globalization;

namespace ColdSim.Files.Disk;

/// <summary>Writes a whole file or none: a draft beside the target first, then renamed over it.</summary>
/// <remarks>
/// A link stays, and what it leads to is replaced, with the permissions and the owner that it had. A pipe or a device is written to, since there
/// is nothing in it to keep. A draft that a killed process left behind is deleted by the next write into the folder.
/// </remarks>
internal static class AtomicFile
{
    /// <summary>Writes <paramref name="path"/>; an exception from <paramref name="write"/> leaves what was there before.</summary>
    /// <param name="path">The file; its folder must exist.</param>
    /// <param name="write">Writes the content.</param>
    /// <param name="calls">The disk; null for the real one.</param>
    /// <exception cref="FileFaultException">It cannot be written; what was there is as it was.</exception>
    public static void Write(string path, Action<Stream> write, DiskCalls? calls = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(write);
        SystemCalls.IgnoreFileSizeSignal();
        if (StreamNumber(path) is { } number && !SystemCalls.IsInherited(number))
            throw FileFaultException.NotWritten(path, "it is not open");
        FileStatus? old = FileStatus.Of(path);
        if (old is null || (old.Kind == FileKind.Regular && !IsOpenFile(path)))
            Replace(path, old, write, calls ?? DiskCalls.Real);
        else if (old.Kind is FileKind.Regular or FileKind.Pipe or FileKind.Device)
            WriteTo(path, old.Kind, write, calls ?? DiskCalls.Real);
        else
            throw FileFaultException.NotWritten(path, old.KindInWords);
    }

    // The stream that a name such as /dev/fd/3 is another word for; null for any other name.
    private static int? StreamNumber(string path) => path switch
    {
        "/dev/stdin" => 0,
        "/dev/stdout" => 1,
        "/dev/stderr" => 2,
        _ => (path.StartsWith("/dev/fd/", StringComparison.Ordinal) || path.StartsWith("/proc/self/fd/", StringComparison.Ordinal))
            && int.TryParse(Path.GetFileName(path), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null,
    };

    // A name such as /dev/fd/3 is a file that somebody has open; another file in its place would not reach them.
    private static bool IsOpenFile(string path) => StreamNumber(path) is not null || Path.GetFullPath(path).StartsWith("/proc/", StringComparison.Ordinal);

    private static void Replace(string path, FileStatus? old, Action<Stream> write, DiskCalls calls)
    {
        string target = CanonicalPath.BehindLink(path), folder = Path.GetDirectoryName(target)!, draft = Draft.NewIn(folder);
        Draft.ClearDead(folder);
        using FileStream file = Named(path, () => Create(draft, target, old));
        bool renamed = false;
        try
        {
            using (TargetStream content = new(calls.Through(file), e => FileFaultException.NotWritten(path, e)))
                write(content);
            Named(path, () => calls.FlushToDisk(file));

            // While a draft is open nobody takes it for one left behind; Windows renames no open file and needs no such guard.
            if (OperatingSystem.IsWindows())
                file.Dispose();
            Named(path, () => calls.Rename(draft, target));
            renamed = true;
        }
        finally
        {
            if (!renamed)
                Delete(draft);
        }
    }

    private static void WriteTo(string path, FileKind kind, Action<Stream> write, DiskCalls calls)
    {
        FileMode mode = kind == FileKind.Regular ? FileMode.Append : FileMode.Open;
        using FileStream file = Named(path, () => new FileStream(path, mode, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0));
        using TargetStream content = new(calls.Through(file), e => FileFaultException.NotWritten(path, e));
        write(content);
    }

    private static void Named(string path, Action step) => Named(path, () =>
    {
        step();
        return true;
    });

    private static T Named<T>(string path, Func<T> step)
    {
        try
        {
            return step();
        }
        catch (Exception e) when (FileFaultException.IsOfWrite(e))
        {
            throw FileFaultException.NotWritten(path, e);
        }
    }

    // A rename would replace a file that may not be written to.
    private static void CheckWritable(string target)
    {
        using FileStream file = new(target, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
    }

    // Unbuffered, so that nothing is left to be written when a write has failed.
    private static FileStream Create(string draft, string target, FileStatus? old)
    {
        if (old is not null)
            CheckWritable(target);
        FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0 };
        if (old is null || OperatingSystem.IsWindows())
            return new FileStream(draft, options);
        UnixFileMode mode = File.GetUnixFileMode(target);
        options.UnixCreateMode = mode;
        FileStream file = new(draft, options);
        try
        {
            // The owner first: a change of owner takes some permissions away.
            // Only the administrator may give a file away, but a member of the group may leave it to the group.
            if (old.Owner is { } owner && FileStatus.Of(draft)?.Owner != owner && SystemCalls.ChangeOwner(draft, owner.User, owner.Group) != 0)
                _ = SystemCalls.ChangeOwner(draft, SystemCalls.SameOwner, owner.Group);
            File.SetUnixFileMode(file.SafeFileHandle, mode);
            return file;
        }
        catch
        {
            file.Dispose();
            Delete(draft);
            throw;
        }
    }

    private static void Delete(string draft)
    {
        try
        {
            File.Delete(draft);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next write into the folder deletes it.
        }
    }
}
