using ColdSim.Files.Disk;
using Xunit;

namespace ColdSim.Tests.Files.Disk;

public sealed class OutputFileTests : IDisposable
{
    private static readonly OutputKind Kind = new("a list", text => text.StartsWith("ours", StringComparison.Ordinal));

    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public OutputFileTests()
    {
        Directory.CreateDirectory(In("folder"));
        File.WriteAllText(In("input.csv"), "ours, but read");
        File.WriteAllText(In("folder/other.csv"), "ours");
        File.CreateSymbolicLink(In("link.csv"), "input.csv");
        File.CreateSymbolicLink(In("link-to-link.csv"), In("link.csv"));
        File.CreateSymbolicLink(In("folder-link"), _folder);
        Unix.HardLink(In("input.csv"), In("hard.csv"));
        Unix.MakePipe(In("pipe"));
    }

    [Theory]
    [InlineData("input.csv")]
    [InlineData("./input.csv")]
    [InlineData("folder/../input.csv")]
    [InlineData("link.csv")]
    [InlineData("link-to-link.csv")]
    [InlineData("hard.csv")]
    [InlineData("folder-link/input.csv")]
    [InlineData("folder-link/folder-link/hard.csv")]
    public void A_path_that_is_read_is_never_written_under_any_name_and_not_with_force(string name)
    {
        foreach (bool force in (bool[])[false, true])
        {
            FilesRead reads = new();
            reads.Add(In("folder/other.csv"));
            reads.Add(In("input.csv"));
            string fault = Assert.Throws<FileFaultException>(() => new OutputFile(In(name), Kind, force).Check(reads)).Message;
            Assert.Contains($"'{In(name)}'", fault, StringComparison.Ordinal);
            Assert.Contains("never overwritten", fault, StringComparison.Ordinal);
            Assert.Equal(name != "input.csv", fault.Contains($"the same file as '{In("input.csv")}'", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_file_that_is_read_by_its_second_name_is_not_written_by_its_first()
    {
        FilesRead reads = new();
        reads.Add(In("hard.csv"));
        Assert.Throws<FileFaultException>(() => new OutputFile(In("link-to-link.csv"), Kind, Force: true).Check(reads));
        reads = new();
        reads.Add(In("pipe"));
        Assert.Throws<FileFaultException>(() => new OutputFile(In("folder-link/pipe"), Kind, Force: true).Check(reads));
    }

    [Theory]
    [InlineData("ours\n", true)]
    [InlineData("\uFEFFours\n", true)]
    [InlineData("", true)]
    [InlineData("mine\nours", false)]
    public void Only_a_file_of_our_own_is_replaced_without_force(string content, bool replaced)
    {
        File.WriteAllText(In("out.csv"), content);
        OutputFile file = new(In("out.csv"), Kind, Force: false);
        if (replaced)
            file.Check(new FilesRead());
        else
            Assert.Equal(
                $"'{In("out.csv")}' exists already and does not look like a list that coldsim wrote, so it is left as it is; name another file, or replace it with --force",
                Assert.Throws<FileFaultException>(() => file.Check(new FilesRead())).Message);
        (file with { Force = true }).Check(new FilesRead());
    }

    [Fact]
    public void Pipes_and_devices_have_nothing_to_lose_and_folders_are_refused()
    {
        foreach (string path in (string[])[In("pipe"), "/dev/null", "/dev/stdout", In("none.csv")])
            new OutputFile(path, Kind, Force: false).Check(new FilesRead());
        Assert.Contains("is a folder", Assert.Throws<FileFaultException>(() => new OutputFile(In("folder"), Kind, Force: true).Check(new FilesRead())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_inodes_the_canonical_path_tells_one_file_from_another()
    {
        Assert.Equal(CanonicalPath.Of(In("input.csv")), CanonicalPath.Of(In("folder-link/folder/../link-to-link.csv")));
        Assert.NotEqual(CanonicalPath.Of(In("input.csv")), CanonicalPath.Of(In("folder-link/folder/other.csv")));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string In(string name) => Path.Combine(_folder, name);
}
