using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files.Scenarios;
using ColdSim.Model.Cylinder;
using ColdSim.Planning.HeatLoss;
using ColdSim.Tests.App.Text;
using Snapshooter.Xunit;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.App.Commands;

public class OtherCommandTests
{
    [Fact]
    public void Check_shows_the_heat_loss_and_runs_nothing()
    {
        Answer answer = CheckAnswer.Of(InventedRuns.Scenario, 0, UnitStyle.Us);
        Snapshot.Match($"{string.Join('\n', AnswerLayout.Whole(answer).Select(l => l.Text))}\n\n{Shell.Printed(CheckText.Sections(InventedRuns.Scenario, UnitStyle.Us))}");
        Shell shell = new() { Terminal = true, Clock = new HastyClock() };
        Assert.Equal(0, shell.Run("check", Shell.ColdSnap));
        Assert.Contains("Heat is lost by", shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Ledger", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_prints_every_warning_and_says_how_many_there_are()
    {
        string odd = Shell.Demo("a.toml");
        string text = File.ReadAllText(Shell.ColdSnap) + string.Concat(Enumerable.Range(1, 4).Select(i =>
            $"\n[[option]]\nname = \"option {i}\"\nset = {{ \"cylinder.blanket.power\" = \"120 W\", \"cylinder.blanket.supply\" = \"shore\" }}\n"));
        Shell shell = new() { Files = new HeldFiles { Texts = { [odd] = text } } };
        Assert.Equal(0, shell.Run("check", odd));
        string[] warnings = shell.Error.TrimEnd().Split('\n');
        Assert.True(warnings.Length > 2, shell.Error);
        Assert.All(warnings, w => Assert.StartsWith("warning: ", w, StringComparison.Ordinal));
        Assert.StartsWith($"It can be run, with {warnings.Length} warnings: ", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_refuses_what_has_problems()
    {
        string wrong = Shell.Demo("a.toml");
        Shell shell = new() { Files = new HeldFiles { Texts = { [wrong] = File.ReadAllText(Shell.ColdSnap) + "\n[cellar]\n" } } };
        Assert.Equal(2, shell.Run("check", wrong));
        string[] lines = shell.Error.Split('\n');
        Assert.StartsWith($"{wrong}:", lines[0], StringComparison.Ordinal);
        Assert.Contains("unknown table [cellar]", lines[0], StringComparison.Ordinal);
        Assert.Equal(["coldsim: 1 problem; nothing was run", ""], lines[1..]);
    }

    [Fact]
    public void New_writes_a_starter_once()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
        try
        {
            string path = Path.Combine(folder, "trip.toml");
            Shell shell = new();
            Assert.Equal(0, shell.Run("new", path));
            Assert.Equal($"#:schema ./coldsim.schema.json\n{StarterScenario.Text("trip.weather.csv")}", File.ReadAllText(path));
            Assert.Equal(0, shell.Run("new", path));
            File.WriteAllText(path, "mine");
            Assert.Equal(2, shell.Run("new", path));
            Assert.StartsWith($"coldsim: '{path}' exists already and does not look like an unchanged starter file", shell.Error, StringComparison.Ordinal);
            Assert.Equal("mine", File.ReadAllText(path));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void What_new_writes_passes_check()
    {
        string folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
        try
        {
            string path = Path.Combine(folder, "trip.toml");
            Shell shell = new();
            Assert.Equal(0, shell.Run("new", path));
            Assert.Contains("trip.weather.csv", shell.Out, StringComparison.Ordinal);
            Assert.Equal(0, shell.Run("check", path));
            Assert.Equal("", shell.Error);
            Assert.Contains("Do: run it with 'coldsim run'.", shell.Out, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_common_cylinder_is_found_by_its_name_and_a_wrong_one_lists_them()
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run("tonight", "--low", "-8F", "--cylinder", "21 lb", "--left", "1/3", "--furnace", "7 kW"));
        Assert.Contains("there are 5 lb, 10 lb, 20 lb", shell.Error, StringComparison.Ordinal);
        Assert.Equal("20 lb", StandardSize.Find("20lb")!.Full().Name);
    }

    [Fact]
    public void View_opens_the_screen_on_a_terminal_only()
    {
        List<string> shown = [];
        Shell shell = new()
        {
            Screen = (opening, units, color) =>
            {
                shown.Add($"{opening.Report.Scenario.Title} {(units == UnitStyle.Si ? "si" : "us")} {color} {Path.GetFileName(opening.File)}");
                return 0;
            },
        };
        Assert.Equal(2, shell.Run("view", Shell.Demo("changeover.toml")));
        Assert.StartsWith("coldsim: the screen needs a terminal", shell.Error, StringComparison.Ordinal);
        shell.Terminal = true;
        Assert.Equal(0, shell.Run("view", Shell.Demo("lockout-at-three.toml"), "--units", "si"));
        Assert.Equal(0, shell.Run());
        Assert.Equal(["Lockout at Cinder Creek si True lockout-at-three.toml", "DEMO, INVENTED: Cold snap at Juniper Shelf us True "], shown);
    }

    [Theory]
    [InlineData("coldsim: unknown command 'rnu'; did you mean 'run'?", "rnu", "x.toml")]
    [InlineData("coldsim: unknown option '--nigths'; did you mean '--nights'?", "run", "x.toml", "--nigths", "3")]
    [InlineData("coldsim: unknown option '--nigths'; did you mean '--nights'?", "run", "--nigths", "3", "x.toml")]
    [InlineData("coldsim: unknown option '--nigths'; did you mean '--nights'?", "run", "x.toml", "--nigths=3")]
    [InlineData("coldsim: unknown option '--jsn'; did you mean '--json'?", "propane", "--jsn", "20C")]
    [InlineData("coldsim: unknown argument 'y.toml'; no more is accepted here", "run", "x.toml", "y.toml")]
    [InlineData("coldsim: FILE is missing", "run")]
    [InlineData("coldsim: --nights needs a value", "run", "x.toml", "--nights")]
    [InlineData("coldsim: --nights is given more than once", "run", "x.toml", "--nights", "1", "--nights", "2")]
    public void A_wrong_command_line_says_what_was_meant(string message, params string[] words)
    {
        Shell shell = new();
        Assert.Equal(2, shell.Run(words));
        Assert.Equal(message, shell.Error.Split('\n')[0]);
        Assert.StartsWith("See 'coldsim", shell.Error.TrimEnd().Split('\n')[^1], StringComparison.Ordinal);
        Assert.Equal("", shell.Out);
    }

    [Theory]
    [InlineData("xyzzy")]
    [InlineData("xyzzy", "--help")]
    public void A_word_that_is_like_no_command_is_answered_with_all_of_them(params string[] words)
    {
        using Host host = new(Stream.Null, TextWriter.Null);
        string all = string.Join(", ", CommandTree.Of(host).Subcommands.Select(c => c.Name));
        Shell shell = new();
        Assert.Equal(2, shell.Run(words));
        Assert.Equal($"coldsim: unknown command 'xyzzy'; there are {all}", shell.Error.Split('\n')[0]);
    }

    [Theory]
    [InlineData]
    [InlineData("run")]
    [InlineData("tonight")]
    [InlineData("check")]
    [InlineData("new")]
    [InlineData("propane")]
    [InlineData("view")]
    public void Help_has_examples_and_exit_codes_within_eighty_columns(params string[] command)
    {
        Shell shell = new();
        Assert.Equal(0, shell.Run([.. command, "--help"]));
        Assert.Contains("Usage:\n  coldsim", shell.Out, StringComparison.Ordinal);
        Assert.Contains($"Examples:\n  ", shell.Out, StringComparison.Ordinal);
        Assert.Contains($"coldsim {string.Join(' ', command)}", shell.Out.Split("Examples:")[1], StringComparison.Ordinal);
        Assert.Contains("Exit codes:", shell.Out, StringComparison.Ordinal);
        Assert.All(shell.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.Equal("", shell.Error);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Heat_loss_adds_up_to_the_whole(bool us)
    {
        HeatLossBreakdown loss = HeatLossBreakdown.Of(InventedRuns.Scenario)!;
        Assert.Equal(loss.Items.Sum(i => i.Conductance_W_K), loss.Total_W_K, 1e-9);
        IReadOnlyList<string> lines = CheckText.HeatLoss(loss, us ? UnitStyle.Us : UnitStyle.Si);
        string together = UnitStyle.Number(us ? loss.Total_W_K / (0.29307107017222 * 1.8) : loss.Total_W_K, 1);
        Assert.Contains(lines, l => l.StartsWith("together", StringComparison.Ordinal) && l.Contains(together, StringComparison.Ordinal));
    }

    [Fact]
    public void Heat_loss_says_what_the_coldest_hour_takes_and_whether_the_furnace_can_hold_it()
    {
        HeatLossBreakdown invented = HeatLossBreakdown.Of(InventedRuns.Scenario)!;
        HeatLossBreakdown half = invented with { Loss = invented.FurnaceHeat!.Value / 2, Gains = Power.Zero };
        HeatLossBreakdown twice = half with { Loss = invented.FurnaceHeat!.Value * 2 };
        Assert.Contains("At the coldest hour", Text(half), StringComparison.Ordinal);
        Assert.Contains("it burns 50 % of that hour", Text(half), StringComparison.Ordinal);
        Assert.Contains("too little", Text(twice), StringComparison.Ordinal);

        static string Text(HeatLossBreakdown loss) => CheckText.Against(loss, UnitStyle.Us)!;
    }
}
