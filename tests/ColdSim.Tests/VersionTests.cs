using System.Diagnostics;
using System.Xml.Linq;
using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests;

/// <summary>There is one version, and a list of what changed since.</summary>
public class VersionTests
{
    [Fact]
    public async Task Version_option_prints_the_version_of_the_build()
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "coldsim.dll"), "--version"]) { RedirectStandardOutput = true };
        using Process program = Process.Start(start)!;
        string printed = await program.StandardOutput.ReadToEndAsync();
        await program.WaitForExitAsync();
        Assert.Equal(0, program.ExitCode);
        Assert.Equal(Versions(Path.Combine(DocPage.Source, "..", "Directory.Build.props")).Single(), printed.Trim());
    }

    [Fact]
    public void Full_version_says_the_version_the_commit_and_the_platform()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("--version", "--full"));
        string[] lines = shell.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["coldsim", "commit"], lines.Take(2).Select(l => l.Split(' ')[0]));
        Assert.Equal(Versions(Path.Combine(DocPage.Source, "..", "Directory.Build.props")).Single(), lines[0].Split(' ')[1]);
        Assert.Contains(".NET", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void No_project_has_a_version_of_its_own()
        => Assert.Empty(Directory.EnumerateFiles(DocPage.Source, "*.*proj", SearchOption.AllDirectories)
            .Append(Path.Combine(DocPage.Source, "Directory.Build.props"))
            .SelectMany(Versions));

    [Fact]
    public void Changelog_begins_with_what_is_not_released_yet_and_uses_the_usual_headings()
    {
        string[] kinds = ["Added", "Changed", "Deprecated", "Removed", "Fixed", "Security"];
        string[] lines = DocPage.Lines("changelog.md");
        Assert.Equal("## Unreleased", lines.First(l => l.StartsWith("## ", StringComparison.Ordinal)));
        Assert.All(lines.Where(l => l.StartsWith("### ", StringComparison.Ordinal)), l => Assert.Contains(l[4..], kinds));
    }

    private static IEnumerable<string> Versions(string file)
        => XDocument.Load(file).Descendants()
            .Where(e => e.Name.LocalName is "Version" or "VersionPrefix" or "AssemblyVersion" or "FileVersion" or "InformationalVersion")
            .Select(e => e.Value);
}
