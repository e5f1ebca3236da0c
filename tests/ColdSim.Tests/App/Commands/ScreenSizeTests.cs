using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>Every answer fits a terminal of 80 columns and 24 rows with the prompt, both streams together, and one line is one line.</summary>
public class ScreenSizeTests
{
    private const int Columns = 80, RowsWithoutPrompt = 23;

    public static TheoryData<string, string> Answers
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string path in Directory.EnumerateFiles(DocPage.Scenarios, "*.toml").Order(StringComparer.Ordinal))
            {
                string demo = Path.GetFileName(path), text = File.ReadAllText(path);
                all.Add("run", demo);
                all.Add("explain", demo);
                if (text.Contains("[[option]]", StringComparison.Ordinal))
                    all.Add("compare", demo);
                if (text.Contains("[[stop]]", StringComparison.Ordinal))
                    all.Add("trip", demo);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Answers))]
    public void Every_answer_about_a_demo_fits_a_terminal(string command, string demo)
    {
        foreach (string units in (string[])["us", "si"])
        {
            Shell shell = new();
            Assert.Equal(0, shell.Run(command, Shell.Demo(demo), "--units", units));
            Fits(shell);
            Assert.Equal(0, shell.Run(command, Shell.Demo(demo), "--units", units, "--brief"));
            string line = Assert.Single(shell.Out.TrimEnd('\n').Split('\n'));
            Assert.InRange(line.Length, 10, Columns);
        }
    }

    [Fact]
    public void The_answer_for_tonight_fits_a_terminal()
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run("tonight", "--low", "-8 °F", "--cylinder", "20 lb", "--left", "1/3", "--furnace", "25000 BTU/h"));
        Fits(shell);
    }

    private static void Fits(Shell shell)
    {
        string[] lines = [.. (shell.Error + shell.Out).TrimEnd('\n').Split('\n')];
        string all = string.Join('\n', lines);
        Assert.True(lines.Sum(l => 1 + Math.Max(0, l.Length - 1) / Columns) <= RowsWithoutPrompt, all);
        Assert.True(shell.Out.Split('\n').All(l => l.Length <= Columns), all);
    }
}
