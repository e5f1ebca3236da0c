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
                foreach (string command in (string[])["run", "run --members 4", "explain", "freeze", "check"])
                    all.Add(command, demo);
                if (text.Contains("[furnace]", StringComparison.Ordinal))
                    all.Add("limits", demo);
                if (text.Contains("[[option]]", StringComparison.Ordinal))
                    all.Add("compare", demo);
                if (text.Contains("[[stop]]", StringComparison.Ordinal))
                    all.Add("trip", demo);
                if (File.Exists(Path.ChangeExtension(path, ".log.csv")))
                    all.Add("log show", demo);
            }

            return all;
        }
    }

    public static TheoryData<string> Readings =>
    [
        "gauge weight --cylinder 20lb --scale 31.2lb --tare 17.6lb --ice 0.3lb --furnace 25000BTU/h",
        "gauge weight --cylinder 20lb --scale 40lb --tare 17.6lb",
        "gauge echo --cylinder 20lb --percent 30% --assumed-temperature 20C --temperature -22C",
        "gauge line --cylinder 20lb --height 5.1in --temperature 10F",
        "gauge float --cylinder 20gal --percent 35% --temperature -10C --tilt 2",
        "gauge pressure --cylinder 20lb --pressure 12psi",
        "gauge pressure --cylinder 20lb --pressure 12psi --temperature 20F --rested",
        "gauge pressure --cylinder 20lb --pressure 160psi --temperature 20F --rested",
        "gauge combine --cylinder 20lb --tare 17.6lb --temperature 10F --weight 31.2lb --weight 31lb --line 6.6in --echo-time 335us",
        "gauge combine --cylinder 20lb --tare 17.6lb --weight 30lb --level 48% --echo-percent 43% --percent-of full --pressure 31psi",
        "gauge combine --cylinder 20lb --tare 17.6lb --weight 30lb --level 28% --echo-percent 43% --percent-of full --pressure 5psi --temperature 40F",
        "gauge combine --cylinder 20lb --tare 17.6lb --temperature 10F --weight 31.2lb --weight 31lb --line 5.1in --line 5.2in --line 5.3in --line 5.4in "
            + "--frost-line 8in --echo-time 300us --echo-time 301us --echo-time 302us",
    ];

    public static TheoryData<string> Demos => [.. Directory.EnumerateFiles(DocPage.Scenarios, "*.toml").Order(StringComparer.Ordinal).Select(p => Path.GetFileName(p))];

    [Theory]
    [MemberData(nameof(Demos))]
    public void What_the_gauges_of_a_demo_should_show_fits_a_terminal(string demo)
    {
        foreach (string units in (string[])["us", "si"])
            Fits(["gauge", "expect", Shell.Demo(demo), "--units", units]);
    }

    [Theory]
    [MemberData(nameof(Answers))]
    public void Every_answer_about_a_demo_fits_a_terminal(string command, string demo)
    {
        foreach (string units in (string[])["us", "si"])
            Fits([.. command.Split(' '), Shell.Demo(demo), "--units", units]);
    }

    [Theory]
    [MemberData(nameof(Readings))]
    public void Every_answer_about_a_cylinder_fits_a_terminal(string command)
    {
        foreach (string units in (string[])["us", "si"])
            Fits([.. command.Split(' '), "--units", units]);
    }

    [Theory]
    [InlineData("capacity 20lb")]
    [InlineData("capacity 100lb --for night --wind 30mph")]
    [InlineData("capacity 20gal --fill 1/3 --low 40F,30F,20F,10F,0F,-10F,-20F,-30F,-40F,-50F")]
    [InlineData("capacity 100lb --low 60F --fill 100%,90%,80%,70%,60%,50%,40%")]
    public void Every_table_of_what_a_cylinder_can_give_fits_a_terminal(string command)
    {
        foreach (string units in (string[])["us", "si"])
            Fits([.. command.Split(' '), "--units", units]);
    }

    [Theory]
    [InlineData("diagnose --smell")]
    [InlineData("diagnose --co")]
    [InlineData("diagnose --stove none")]
    [InlineData("diagnose --stove fades --furnace minutes --air -8F --left 1/3")]
    [InlineData("diagnose --furnace fan-only --fan full --volts 11.9V --return clear --vents clear --reset no --stove normal --air 5F --elevation 9000ft")]
    [InlineData("diagnose --furnace clicks --did swapped,opened-fast,filled --regulator iced --stove weak --load together --by-day better --reopened no --gas mixed --air -30F --wall -50F --frost-line 8in --pressure 3psi --left 20%")]
    public void Every_diagnosis_fits_a_terminal(string command)
    {
        foreach (string units in (string[])["us", "si"])
            Fits([.. command.Split(' '), "--units", units]);
    }

    [Fact]
    public void What_a_fit_learns_fits_a_terminal()
    {
        foreach (string units in (string[])["us", "si"])
            Fits(["fit", Shell.Demo("three-days.toml"), "--units", units]);
    }

    [Fact]
    public void Every_look_into_a_weather_file_fits_a_terminal()
    {
        foreach (string path in Directory.EnumerateFiles(DocPage.Scenarios, "*.csv").Where(f => !f.EndsWith(".log.csv", StringComparison.Ordinal)))
        {
            foreach (string units in (string[])["us", "si"])
            {
                Fits(["weather", path, "--units", units]);
                Fits(["weather", path, "--units", units, "--night", "worst", "--hollow", "3K", "--latitude", "40.5", "--longitude", "-110.5", "--elevation", "3000m", "--station-elevation", "2000m"]);
            }
        }
    }

    // By default, and in one line.
    private static void Fits(string[] words)
    {
        Shell shell = new();
        Assert.True(shell.Run(words) == 0, shell.Error);
        Fits(shell);
        Assert.Equal(0, shell.Run([.. words, "--brief"]));
        string line = Assert.Single(shell.Out.TrimEnd('\n').Split('\n'));
        Assert.InRange(line.Length, 10, Columns);
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
