using ColdSim.Tests.App.Commands;
using ColdSim.Tests.App.Reports;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>The pictures of the pages are those that <c>coldsim report --svg</c> makes.</summary>
public sealed class ReportPictureTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    [Trait("Category", "Docs")]
    public void The_picture_of_the_failing_night_is_what_the_program_draws()
    {
        Shell shell = new() { Clock = ReportPage.Clock };
        Assert.True(shell.Run("report", Shell.ColdSnap, "--out", Path.Combine(_folder, "report.html"), "--svg", _folder) == 0, shell.Error);
        Current(File.ReadAllText(Path.Combine(_folder, "night-2.svg")), "report-night.svg");
    }

    [Fact]
    [Trait("Category", "Docs")]
    public void The_picture_of_the_limits_is_what_the_program_draws()
    {
        Shell shell = new() { Clock = ReportPage.Clock };
        Assert.True(shell.Run("report", Shell.ColdSnap, "--only", "limits", "--page", "a5", "--out", Path.Combine(_folder, "door.html"), "--svg", _folder) == 0, shell.Error);
        Current(File.ReadAllText(Path.Combine(_folder, "limits.svg")), "report-limits.svg");
    }

    private static void Current(string made, string page)
    {
        string path = DocPage.PathOf(page);
        if (Environment.GetEnvironmentVariable(GeneratedPage.WriteVariable) == "1")
            File.WriteAllText(path, made);
        Assert.Equal(made, File.ReadAllText(path));
    }
}
