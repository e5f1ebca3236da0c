using ColdSim.Files;
using Xunit;

namespace ColdSim.Tests.Files;

public sealed class AtomicFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    private string Target => Path.Combine(_folder, "out.txt");

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

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
