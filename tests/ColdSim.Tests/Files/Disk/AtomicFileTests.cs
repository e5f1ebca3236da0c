using System.Runtime.Versioning;
using ColdSim.Files.Disk;
using Xunit;

namespace ColdSim.Tests.Files.Disk;

[UnsupportedOSPlatform("windows")]
public sealed class AtomicFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    private string Target => In("out.txt");

    [Fact]
    public void A_file_is_written_and_replaced_whole()
    {
        AtomicFile.Write(Target, s => s.Write("one"u8));
        AtomicFile.Write(Target, s => s.Write("2"u8));
        Assert.Equal("2", File.ReadAllText(Target));
        Assert.Equal([Target], Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_failure_leaves_what_was_there_and_nothing_else()
    {
        AtomicFile.Write(Target, s => s.Write("one"u8));
        Assert.Throws<OperationCanceledException>(() => AtomicFile.Write(Target, s =>
        {
            s.Write("half"u8);
            throw new OperationCanceledException();
        }));
        Assert.Equal("one", File.ReadAllText(Target));
        Assert.Equal([Target], Directory.GetFiles(_folder));
    }

    [Fact]
    public void A_file_in_memory_is_replaced_like_any_other_though_its_folder_is_among_the_devices()
    {
        string file = $"/dev/shm/{Path.GetFileName(_folder)}.csv";
        if (!Directory.Exists("/dev/shm"))
            file = Target;
        try
        {
            AtomicFile.Write(file, s => s.Write("one"u8));
            AtomicFile.Write(file, s => s.Write("2"u8));
            Assert.Equal("2", File.ReadAllText(file));
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void A_fault_of_whoever_writes_the_content_is_not_said_to_be_the_files()
        => Assert.Equal("mine", Assert.Throws<IOException>(() => AtomicFile.Write(Target, _ => throw new IOException("mine"))).Message);

    [Theory]
    [InlineData("600")]
    [InlineData("640")]
    [InlineData("666")]
    [InlineData("755")]
    public void A_file_that_is_replaced_keeps_its_permissions(string octal)
    {
        UnixFileMode mode = (UnixFileMode)Convert.ToInt32(octal, 8);
        File.WriteAllText(Target, "before");
        File.SetUnixFileMode(Target, mode);
        AtomicFile.Write(Target, s => s.Write("after"u8));
        Assert.Equal("after", File.ReadAllText(Target));
        Assert.Equal(mode, File.GetUnixFileMode(Target));
    }

    [Theory]
    [InlineData("elsewhere/real.txt")]
    [InlineData("made-by-the-write.txt")]
    public void A_link_stays_and_what_it_leads_to_is_replaced(string real)
    {
        Directory.CreateDirectory(In("elsewhere"));
        File.WriteAllText(In("elsewhere/real.txt"), "before");
        File.CreateSymbolicLink(In("second"), real);
        File.CreateSymbolicLink(Target, "second");
        AtomicFile.Write(Target, s => s.Write("after"u8));
        Assert.Equal("second", new FileInfo(Target).LinkTarget);
        Assert.Equal(real, new FileInfo(In("second")).LinkTarget);
        Assert.Equal("after", File.ReadAllText(In(real)));
        Assert.Null(new FileInfo(In(real)).LinkTarget);
    }

    [Fact]
    public void Links_in_a_circle_are_a_fault_in_our_words()
    {
        File.CreateSymbolicLink(Target, In("b"));
        File.CreateSymbolicLink(In("b"), Target);
        Assert.Equal($"'{Target}' cannot be written: its links lead round in a circle", Assert.Throws<FileFaultException>(() => AtomicFile.Write(Target, _ => { })).Message);
    }

    [Fact]
    public async Task A_pipe_is_written_to_and_stays_a_pipe()
    {
        Unix.MakePipe(Target);
        Task<string> read = Task.Run(() => File.ReadAllText(Target));
        AtomicFile.Write(Target, s => s.Write("through"u8));
        Assert.Equal("through", await read.WaitAsync(TimeSpan.FromSeconds(30)));
        Assert.Equal(FileKind.Pipe, FileStatus.Of(Target)!.Kind);
    }

    [Fact]
    public void A_device_is_written_to_and_a_full_one_is_a_fault_in_our_words()
    {
        AtomicFile.Write("/dev/null", s => s.Write("gone"u8));
        Assert.Equal(FileKind.Device, FileStatus.Of("/dev/null")!.Kind);
        Assert.Equal("'/dev/full' cannot be written: the disk is full", Assert.Throws<FileFaultException>(() => AtomicFile.Write("/dev/full", s => s.Write("x"u8))).Message);
        Assert.Equal(FileKind.Device, FileStatus.Of("/dev/full")!.Kind);
    }

    [Theory]
    [InlineData("no/such/folder/x.csv", "there is no such folder")]
    [InlineData("", "it is a folder")]
    public void What_cannot_be_written_is_named_with_the_reason(string name, string why)
        => Assert.EndsWith($"cannot be written: {why}", Assert.Throws<FileFaultException>(() => AtomicFile.Write(In(name), _ => { })).Message, StringComparison.Ordinal);

    [Fact]
    public void The_draft_of_a_dead_process_is_deleted_by_the_next_write_and_nothing_else_is()
    {
        int dead = Unix.DeadProcess();
        string ours = In($".coldsim-{dead}-{new string('a', 32)}.part");
        string[] others =
        [
            In($".coldsim-{Environment.ProcessId}-{new string('a', 32)}.part"), In($".coldsim-{new string('a', 32)}.part"), In($".coldsim-{dead}-short.part"),
            In($"coldsim-{dead}-{new string('a', 32)}.part"), In($".coldsim-{dead}-{new string('a', 32)}.part.csv"), In(".coldsim-1-" + new string('b', 32) + ".part"),
        ];
        foreach (string file in (string[])[ours, .. others])
            File.WriteAllText(file, "half");
        AtomicFile.Write(Target, s => s.Write("whole"u8));
        Assert.Equal(((string[])[.. others, Target]).Order(StringComparer.Ordinal), Directory.GetFiles(_folder).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_draft_that_somebody_holds_open_stays_even_if_its_process_is_not_known_here()
    {
        string held = In($".coldsim-{Unix.DeadProcess()}-{new string('a', 32)}.part");
        using (new FileStream(held, FileMode.CreateNew, FileAccess.Write, FileShare.None))
        {
            AtomicFile.Write(Target, s => s.Write("whole"u8));
            Assert.True(File.Exists(held));
        }

        AtomicFile.Write(Target, s => s.Write("whole"u8));
        Assert.False(File.Exists(held));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string In(string name) => Path.Combine(_folder, name);
}
