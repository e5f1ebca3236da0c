namespace ColdSim.Files.Disk;

/// <summary>What a name leads to.</summary>
internal enum FileKind
{
    Regular,
    Folder,
    Pipe,
    Device,
    Socket,
}

/// <summary>What makes a file the same file under every name: device and inode where the system gives them, otherwise its canonical path.</summary>
internal readonly record struct FileIdentity(ulong Device, ulong Inode, string? CanonicalPath);

/// <summary>A file as it is on the disk, links followed.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Identity">Which file it is.</param>
/// <param name="Owner">Its owner and group; null where the system has none.</param>
internal sealed record FileStatus(FileKind Kind, FileIdentity Identity, (uint User, uint Group)? Owner)
{
    // The parts of statx's result, which are at the same places on every processor.
    private const int OwnerAt = 20, GroupAt = 24, ModeAt = 28, InodeAt = 32, MajorAt = 136, MinorAt = 140;
    private const int KindMask = 0xF000;

    /// <summary>What kind of thing that is no ordinary file, in words.</summary>
    public string KindInWords => Kind switch
    {
        FileKind.Folder => "it is a folder",
        FileKind.Pipe => "it is a pipe, not a file",
        FileKind.Device => "it is a device, not a file",
        FileKind.Socket => "it is a socket, not a file",
        _ => "it is a file",
    };

    /// <summary>The status of a path; null where there is nothing.</summary>
    public static FileStatus? Of(string path)
    {
        if (OperatingSystem.IsLinux())
        {
            try
            {
                return OfLinux(path);
            }
            catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException)
            {
                // A C library without statx.
            }
        }

        return OfPath(path);
    }

    private static FileStatus? OfLinux(string path)
    {
        Span<byte> status = stackalloc byte[SystemCalls.StatxSize];
        if (SystemCalls.Statx(SystemCalls.CurrentFolder, path, 0, SystemCalls.BasicStatus, status) != 0)
            return null;
        FileKind kind = (Word16(status, ModeAt) & KindMask) switch
        {
            0x4000 => FileKind.Folder,
            0x1000 => FileKind.Pipe,
            0x2000 or 0x6000 => FileKind.Device,
            0xC000 => FileKind.Socket,
            _ => FileKind.Regular,
        };
        ulong device = ((ulong)Word32(status, MajorAt) << 32) | Word32(status, MinorAt);
        FileIdentity identity = new(device, BitConverter.ToUInt64(status[InodeAt..]), null);
        return new(kind, identity, (Word32(status, OwnerAt), Word32(status, GroupAt)));
    }

    private static FileStatus? OfPath(string path)
    {
        string canonical = CanonicalPath.Of(path);
        bool folder = Directory.Exists(canonical);
        bool device = canonical.StartsWith("/dev/", StringComparison.Ordinal) || canonical.StartsWith(@"\\.\", StringComparison.Ordinal);
        if (!folder && !device && !File.Exists(canonical))
            return null;
        return new(folder ? FileKind.Folder : device ? FileKind.Device : FileKind.Regular, new(0, 0, CanonicalPath.KeyOf(canonical)), null);
    }

    private static int Word16(ReadOnlySpan<byte> status, int at) => BitConverter.ToUInt16(status[at..]);

    private static uint Word32(ReadOnlySpan<byte> status, int at) => BitConverter.ToUInt32(status[at..]);
}
