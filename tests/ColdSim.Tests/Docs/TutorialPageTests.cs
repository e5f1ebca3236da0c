using ColdSim.Tests.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.Docs;

/// <summary>The last answer of the tutorial comes from files that its reader makes on the way; its other answers are blocks that are written from the program.</summary>
public class TutorialPageTests
{
    [Fact]
    public void The_three_days_end_in_the_forecast_that_the_page_shows()
    {
        const string Title = "From the log's latest reading";
        DirectoryInfo folder = Directory.CreateTempSubdirectory("tutorial");
        try
        {
            foreach (string file in new[] { "three-days.toml", "three-days.weather.csv", "three-days.log.csv" })
                File.Copy(Shell.Demo(file), Path.Combine(folder.FullName, file));
            string learned = Path.Combine(folder.FullName, "learned.toml");
            Shell shell = new() { Columns = 80 };
            Assert.Equal(0, shell.Run("fit", Path.Combine(folder.FullName, "three-days.toml"), "--out", learned));
            File.Move(Path.Combine(folder.FullName, "three-days.log.csv"), Path.Combine(folder.FullName, "learned.log.csv"));
            Assert.Equal(0, shell.Run("run", learned, "--full"));
            Assert.Equal(Section(DocPage.Lines("tutorial-three-days.md"), Title, "..."), Section(shell.Out.Split('\n'), Title, ""));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string[] Section(IEnumerable<string> lines, string title, string end)
        => [.. lines.SkipWhile(l => l != title).TakeWhile(l => l.TrimEnd() != end)];
}
