using System.Text;

namespace ColdSim.Files.Disk;

/// <summary>A file about to be written.</summary>
/// <param name="Path">Where.</param>
/// <param name="Kind">What is written.</param>
/// <param name="Force">Whether a file that this program did not write may be replaced too; one that is read never is.</param>
internal sealed record OutputFile(string Path, OutputKind Kind, bool Force)
{
    /// <summary>Whether the file is one that is read, of which a part is changed: it must still be what was read.</summary>
    public bool IsEdit { get; init; }

    /// <summary>Whether it is standard output, which is written to as it is and never replaced.</summary>
    public bool IsStandardOutput => !OperatingSystem.IsWindows() && Path is "/dev/stdout" or "/dev/fd/1" or "/proc/self/fd/1";

    /// <summary>Refuses a path that is read, or that holds something this program did not write.</summary>
    /// <param name="reads">The files that are read.</param>
    /// <exception cref="FileFaultException">It is not to be written.</exception>
    public void Check(FilesRead reads)
    {
        ArgumentNullException.ThrowIfNull(reads);
        if (IsEdit && !IsEmptyOrOurs())
            throw FileFaultException.Refused($"'{Quote.OfPath(Path)}' was changed by somebody else since it was read; nothing was written into it");
        if (IsEdit)
            return;
        if (reads.SameAs(Path) is { } read)
            throw FileFaultException.Refused(read == Path ? $"'{Quote.OfPath(Path)}' is an input of this run and is never overwritten; name another file"
                : $"'{Quote.OfPath(Path)}' is the same file as '{Quote.OfPath(read)}', an input of this run, and is never overwritten; name another file");
        if (FileStatus.Of(Path) is not { } status)
            return;
        if (status.Kind == FileKind.Folder)
            throw FileFaultException.Refused($"'{Quote.OfPath(Path)}' is a folder");
        if (status.Kind == FileKind.Regular && !Force && !IsStandardOutput && !IsEmptyOrOurs())
            throw FileFaultException.Refused($"'{Quote.OfPath(Path)}' exists already and does not look like {Kind.Name} that coldsim wrote, so it is left as it is; name another file, or replace it with --force");
    }

    private bool IsEmptyOrOurs()
    {
        try
        {
            using FileStream file = new(Path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            byte[] bytes = new byte[Math.Min(file.Length, OutputKind.Beginning)];
            int length = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return length == 0 || Kind.IsOurs(Encoding.UTF8.GetString(bytes, 0, length).TrimStart('\uFEFF'));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw FileFaultException.NotRead(Path, e);
        }
    }
}
