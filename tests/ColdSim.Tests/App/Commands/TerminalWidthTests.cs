using ColdSim.App.Commands;
using ColdSim.Tests.Files;
using Xunit;

namespace ColdSim.Tests.App.Commands;

/// <summary>No line of any command is wider than a terminal of 80 columns, on standard output or standard error.</summary>
public class TerminalWidthTests
{
    private const int Columns = 80;

    public static TheoryData<string> Scenarios { get; } = new(Directory.EnumerateFiles(DocPage.Scenarios, "*.toml").Select(f => Path.GetFileName(f)!).Order());

    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Scenarios))]
    public void Every_answer_on_a_demo_fits(string demo)
    {
        string file = Shell.Demo(demo);
        foreach (string units in (string[])["us", "si"])
        {
            Fits("run", file, "--units", units);
            Fits("trip", file, "--units", units);
            Fits("compare", file, "--units", units);
            Fits("explain", file, "--units", units);
            Fits("freeze", file, "--at", "04:00", "--units", units);
            Fits("limits", file, "--fills", "50", "--units", units);
            Fits("limits", file, "--fills", "50", "--units", units, "--one-page");
        }

        Fits("check", file);
        Fits("run", file, "--members", "2");
        FitsBesideJson("run", file, "--json");
    }

    [Fact]
    public void Every_answer_without_a_scenario_fits()
    {
        Fits("tonight", "--low", "-10 °F", "--cylinder", "20 lb", "--left", "8 lb");
        Fits("tonight", "--low", "-10 °F", "--cylinder", "20 lb", "--left", "8 lb", "--units", "si");
        Fits("propane");
        Fits("weather", Shell.Demo("cold-snap-weather.csv"));
        Fits("weather", Shell.Demo("three-days.weather.csv"), "--units", "si");
        Fits("fit", Shell.Demo("three-days.toml"));
        Fits("log", Shell.Demo("three-days.toml"));
    }

    [Fact]
    public void Every_help_fits()
    {
        Fits("--help");
        using Host host = new(Stream.Null, TextWriter.Null);
        foreach (System.CommandLine.Command command in CommandTree.Of(host, null).Subcommands)
            Fits(command.Name, "--help");
    }

    [Fact]
    public void What_is_wrong_with_a_file_fits_and_goes_on_set_in_from_its_first_line()
    {
        const string Text = """
            [cylinder]
            size = "20 lb"
            contents_that_somebody_wrote_under_a_name_that_is_much_longer_than_any_of_ours = "12 lb"
            left = "a lot of gas, nearly all that it had, as far as one can tell in the dark"
            """;
        Shell shell = new() { Columns = Columns, Files = new HeldFiles { Texts = { ["a-trip-with-a-rather-long-name.toml"] = Text } } };
        Assert.Equal(2, shell.Run("run", "a-trip-with-a-rather-long-name.toml"));
        Assert.Contains(shell.Error.Split('\n'), l => l.StartsWith("  ", StringComparison.Ordinal));
        Assert.All(shell.Error.Split('\n').Where(l => l.Contains(' ', StringComparison.Ordinal) && !l.Contains("much_longer", StringComparison.Ordinal)), l => Assert.InRange(l.Length, 0, Columns));
    }

    [Fact]
    public void A_command_to_be_copied_is_broken_as_a_shell_joins_it_again()
    {
        using StringWriter text = new() { NewLine = "\n" };
        using VisibleWriter writer = new(text, 40);
        writer.WriteLine("  coldsim tonight --low \"-10 °F\" --cylinder \"20 lb\" --left \"8 lb\"");
        Assert.Equal("  coldsim tonight --low \"-10 °F\" \\\n    --cylinder \"20 lb\" --left \"8 lb\"\n", text.ToString());
    }

    private static void Fits(params string[] words)
    {
        Shell shell = new() { Columns = Columns };
        shell.Run(words);
        Assert.True(shell.Out.Length > 0 || shell.Error.Length > 0);
        string[] wide = [.. (shell.Out + shell.Error).Split('\n').Where(l => l.Length > Columns)];
        Assert.True(wide.Length == 0, $"{string.Join(' ', words)}\n{string.Join('\n', wide)}");
    }

    private static void FitsBesideJson(params string[] words)
    {
        Shell shell = new() { Columns = Columns };
        shell.Run(words);
        Assert.All(shell.Error.Split('\n'), l => Assert.InRange(l.Length, 0, Columns));
    }
}
